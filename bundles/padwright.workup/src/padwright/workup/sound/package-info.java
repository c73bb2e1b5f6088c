/**
 * How a key system sounds: from its joints, holes, cups and fingerings to {@link padwright.engine.acoustics} and back
 * into words. {@link padwright.workup.sound.SystemSound} is the one way there.
 */
package padwright.workup.sound;
