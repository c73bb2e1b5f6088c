package padwright.engine.bench;

/** A way to work on a pad from round to round. */
public enum Method {

	/** As the engine answers, with hours turned from round to round. */
	ANSWERED,
	/** Film as thick as the slackest reading, under the hours that slide. */
	RULE_OF_THUMB,
	/** As the engine answers to one who reads every half hour to a twentieth of a thou. */
	RIM_KNOWN
}
