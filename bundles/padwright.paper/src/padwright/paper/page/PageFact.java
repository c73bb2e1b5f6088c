package padwright.paper.page;

/** A fact of the whole job, as in {@code Seat within} {@code 0.5 thou}. */
public record PageFact(String label, String value) {
}
