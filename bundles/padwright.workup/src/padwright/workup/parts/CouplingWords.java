package padwright.workup.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.model.Resolved;
import padwright.model.keysystem.Adjuster;
import padwright.model.keysystem.Coupling;
import padwright.workup.words.Messages;
import padwright.workup.words.Terms;
import padwright.workup.words.Texts;

/** What sets a coupling, and when it holds, in words. */
public final class CouplingWords {

	private CouplingWords() {
	}

	/** As in {@code screw UNM 1.00, ratio 1.2, when G is pressed}; empty if nothing is said. */
	public static String of(Coupling coupling) {
		List<String> words = new ArrayList<>();
		Optional.ofNullable(coupling.getAdjuster()).ifPresent(adjuster -> words.add(of(adjuster)));
		Optional.ofNullable(coupling.getRatio()).ifPresent(ratio -> words.add(Messages.of("coupling.ratio", Texts.decimal(ratio.toPlainString()))));
		Optional.ofNullable(coupling.getPlay()).ifPresent(play -> words.add(Messages.of("coupling.play", Texts.decimal(play.toString()))));
		Resolved.of(coupling.getCondition()).ifPresent(key -> words.add(
				Messages.of(coupling.isUnpressed() ? "coupling.unless" : "coupling.when", Labels.of(key))));
		return String.join(", ", words);
	}

	/** As in {@code screw UNM 1.00}. */
	public static String of(Adjuster adjuster) {
		StringBuilder words = new StringBuilder(Terms.of(adjuster.getKind()));
		Optional.ofNullable(adjuster.getThread()).ifPresent(thread -> words.append(' ').append(thread));
		Optional.ofNullable(adjuster.getPitch()).ifPresent(pitch -> words.append(' ')
				.append(Messages.of("coupling.pitch", Texts.decimal(pitch.toString()))));
		return words.toString();
	}
}
