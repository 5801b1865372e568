/** Pages for man(1), made by the build of what picocli knows of the commands. */
package org.garboard.cli.manual;
