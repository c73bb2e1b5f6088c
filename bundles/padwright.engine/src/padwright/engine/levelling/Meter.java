package padwright.engine.levelling;

/** Counts the work of one search against its budget. */
final class Meter {

	/** The clock is read only now and then: reading it costs more than a node. */
	private static final long NODES_PER_GLANCE = 1 << 12;

	private final long mostNodes;
	private final long start = System.nanoTime();
	private final long mostNanoseconds;
	private long nodes;
	private boolean spent;

	Meter(Budget budget) {
		this.mostNodes = budget.nodes();
		this.mostNanoseconds = budget.time().toNanos();
	}

	void count() {
		nodes++;
		if (nodes >= mostNodes || (nodes & NODES_PER_GLANCE - 1) == 0 && System.nanoTime() - start >= mostNanoseconds) {
			spent = true;
		}
	}

	boolean isSpent() {
		return spent;
	}
}
