/**
 * What mounts ask of skin, rooms, supports and sound, where a job tells of them beside the table of offsets. Each class makes
 * the demands of one subject, to be listed by the mounts that ask them. What is not told stays NOT KNOWN and rules nothing out.
 * Hull frame, metres and radians.
 */
package org.garboard.mount.told;
