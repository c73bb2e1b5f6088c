package padwright.views.map;

/** A key that closes another, by their names. */
public record MapCoupling(String driver, String driven) {
}
