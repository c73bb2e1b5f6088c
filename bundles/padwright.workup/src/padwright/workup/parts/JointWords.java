package padwright.workup.parts;

import java.util.Optional;

import padwright.model.keysystem.Joint;
import padwright.workup.words.Messages;

/** What joints are called in the language of the reader. */
public final class JointWords {

	private JointWords() {
	}

	/** Of a joint that the language has a word for and the system gives no label. */
	public static Optional<String> known(Joint joint) {
		if (joint.getLabel() != null || joint.getName() == null) {
			return Optional.empty();
		}
		return switch (joint.getName()) {
		case "head" -> Optional.of(Messages.of("joint.head"));
		case "body" -> Optional.of(Messages.of("joint.body"));
		case "foot" -> Optional.of(Messages.of("joint.foot"));
		default -> Optional.empty();
		};
	}

	/** Its label, else the word for it, else its name. */
	public static String of(Joint joint) {
		return known(joint).orElseGet(() -> Labels.of(joint));
	}
}
