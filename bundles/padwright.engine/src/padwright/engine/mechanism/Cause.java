package padwright.engine.mechanism;

/** Why a key is moved, or kept from moving. */
public sealed interface Cause permits Pushed, Driven {

	/** The key that is acted on. */
	String key();
}
