package padwright.engine.bench;

import padwright.engine.evidence.RimCondition;
import padwright.engine.levelling.Stiffness;

/** Three kinds of instrument. */
public enum Instrument {

	SOLDERED_RIGID("soldered, rigid-base pads", RimCondition.TRUE, new Stiffness(0.1)),
	DRAWN_FELT("drawn, felt pads", RimCondition.DRAWN, new Stiffness(0.003)),
	WORN_FELT("nicked or warped, felt pads", RimCondition.ROUGH, new Stiffness(0.003));

	private final String label;
	private final RimCondition condition;
	private final Stiffness stiffness;

	Instrument(String label, RimCondition condition, Stiffness stiffness) {
		this.label = label;
		this.condition = condition;
		this.stiffness = stiffness;
	}

	public String label() {
		return label;
	}

	public RimCondition condition() {
		return condition;
	}

	/** What the stock says of its pads. */
	public Stiffness stiffness() {
		return stiffness;
	}
}
