/**
 * What a job may ask of a keel pocket beside its depth: walls, blends into the skin, floor, laminate, former. Metres.
 * Where no source stands beside a default it is common practice, or our choice.
 */
package org.garboard.mount.pocket;
