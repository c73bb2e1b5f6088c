package padwright.engine.fingering;

/** How a key stands when no finger is on it. */
public enum RestPosture {
	OPEN, CLOSED
}
