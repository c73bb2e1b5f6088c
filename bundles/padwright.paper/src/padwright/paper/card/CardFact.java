package padwright.paper.card;

/** A fact of the whole job, as in {@code Seat within} {@code 0.5 thou}. */
public record CardFact(String label, String value) {
}
