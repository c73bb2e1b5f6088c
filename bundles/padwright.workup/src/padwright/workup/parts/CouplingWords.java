package padwright.workup.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.model.Present;
import padwright.model.keysystem.Adjuster;
import padwright.model.keysystem.Coupling;

/** What sets a coupling, and when it holds, in words. */
public final class CouplingWords {

	private CouplingWords() {
	}

	/** As in {@code screw UNM 1.00, ratio 1.2, when G is pressed}; empty if nothing is said. */
	public static String of(Coupling coupling) {
		List<String> words = new ArrayList<>();
		Optional.ofNullable(coupling.getAdjuster()).ifPresent(adjuster -> words.add(of(adjuster)));
		Optional.ofNullable(coupling.getRatio()).ifPresent(ratio -> words.add("ratio " + ratio.toPlainString()));
		Optional.ofNullable(coupling.getPlay()).ifPresent(play -> words.add("play " + play));
		Present.of(coupling.getCondition()).ifPresent(key -> words.add("when " + key.getName()
				+ (coupling.isUnpressed() ? " is not pressed" : " is pressed")));
		return String.join(", ", words);
	}

	/** As in {@code screw UNM 1.00}. */
	public static String of(Adjuster adjuster) {
		StringBuilder words = new StringBuilder(adjuster.getKind().getLiteral());
		Optional.ofNullable(adjuster.getThread()).ifPresent(thread -> words.append(' ').append(thread));
		Optional.ofNullable(adjuster.getPitch()).ifPresent(pitch -> words.append(" of pitch ").append(pitch));
		return words.toString();
	}
}
