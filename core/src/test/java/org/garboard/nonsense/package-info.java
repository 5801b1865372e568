/** What every reader must bear when it is given nonsense; of use to the tests of all modules. */
package org.garboard.nonsense;
