/**
 * From fingers to holes: keys that turn together, the cups they carry, finger holes, touches, and what the keys do to
 * each other.
 *
 * <pre>{@code
 * Mechanism flute = new Mechanism(
 *         List.of(new MovingKey("F", Rest.OPEN), new MovingKey("Fs", Rest.OPEN), new MovingKey("Ds", Rest.CLOSED)),
 *         List.of(CoveredHole.under("Fs"), CoveredHole.under("F"), CoveredHole.under("Ds")),
 *         List.of(FingerTouch.moving("R1", "F"), FingerTouch.moving("R4", "Ds")),
 *         List.of(KeyLink.closes("F", "Fs")));
 * MechanismState low = flute.state(Pressing.of("R1", "R4"));
 * low.holes(HoleState.OPEN);                             // [Ds]
 * low.moved().get("Fs");                                 // [R1 presses F, F closes Fs]
 * TouchFeel.of(flute, "R1", Map.of("F", new BigDecimal("30"), "Fs", new BigDecimal("25"))).force();    // 55
 * }</pre>
 */
package padwright.engine.mechanism;
