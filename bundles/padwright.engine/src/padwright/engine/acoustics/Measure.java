package padwright.engine.acoustics;

/** What can be measured of a part of an instrument. */
public enum Measure {
	/** How far along the bore. */
	PLACE,
	/** Inside diameter. */
	DIAMETER,
	/** Height of a hole from the bore to its rim. */
	CHIMNEY,
	/** Width of the rim of a hole. */
	RIM,
	/** Outside diameter of the pad cup over a hole. */
	CUP,
	/** How far the pad hangs over the rim when it is open. */
	RISE,
	/** Diameter of the opening in a perforated pad. */
	OPENING,
	/** How deep that opening is: pad and cup. */
	DEPTH
}
