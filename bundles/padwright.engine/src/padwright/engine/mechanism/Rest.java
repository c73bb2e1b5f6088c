package padwright.engine.mechanism;

/** How a key stands when no finger and no other key moves it. */
public enum Rest {
	OPEN, CLOSED
}
