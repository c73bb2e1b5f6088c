/**
 * What another climate does to the height of a stack. Material constants are ranges, and the answer is an interval.
 *
 * <pre>{@code
 * MaterialRange expansion = MaterialRange.of("104", "106.5");            // acetal, ppm/K
 * MaterialRange swelling = MaterialRange.of("0", "0.01");                // %/%RH, invented
 * Layer disc = new Layer("backing", Length.thou("20"), expansion, swelling);
 * Drift drift = Drift.of(List.of(disc), Climate.of("20", "45"), Climate.of("28", "70"));
 * drift.total();                                    // 422 nm to 1703 nm
 * Hinge hinge = new Hinge(ClockHour.ofHour(12), 0.58);
 * drift.against(Length.thou("0.5"), hinge);         // SURELY_WITHIN
 * }</pre>
 */
package padwright.engine.drift;
