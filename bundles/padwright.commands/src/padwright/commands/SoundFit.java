package padwright.commands;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import padwright.language.edit.FitEdits;
import padwright.language.edit.TextEdit;
import padwright.language.edit.UnifiedDiff;
import padwright.language.files.SafeFile;
import padwright.language.shop.Shop;
import padwright.model.keysystem.KeySystem;
import padwright.workup.sound.FitRoom;
import padwright.workup.sound.MissingSize;
import padwright.workup.sound.ScaleSound;
import padwright.workup.sound.SystemFit;
import padwright.workup.sound.SystemSound;

/**
 * A system brought in tune.
 *
 * @param edits of its text
 * @param text with the edits
 * @param before how it sounds
 * @param after how it sounds as the new text says
 */
record SoundFit(ChosenSystem chosen, List<TextEdit> edits, String text, ScaleSound before, ScaleSound after) {

	/** @throws InputException if it cannot be brought in tune */
	static SoundFit of(ChosenSystem chosen, SystemSound system, FitRoom room) {
		Path file = chosen.shop().file();
		String old = chosen.shop().shop().text(file);
		List<TextEdit> edits = edits(chosen, system, room);
		String text = TextEdit.apply(edits, old);
		SystemSound after = SystemSound.of(read(chosen, file, text));
		if (after.instrument().isEmpty()) {
			throw new InputException(refusal(chosen.file(), after));
		}
		return new SoundFit(chosen, edits, text, ScaleSound.of(system), ScaleSound.of(after));
	}

	/** Why the text with the edits makes no instrument. */
	private static String refusal(Path file, SystemSound after) {
		MissingSize first = after.missing().get(0);
		return ShownPath.of(file) + ":" + NodeModelUtils.findActualNodeFor(first.element()).getStartLine()
				+ " was not brought in tune: with the sizes that would do it, " + first.advice().why()
				+ ". Leave it less room with --move and --widen, or take out the places of the bore that are in the way.";
	}

	private static List<TextEdit> edits(ChosenSystem chosen, SystemSound system, FitRoom room) {
		try {
			return FitEdits.of(chosen.system(), SystemFit.of(system, room));
		} catch (IllegalArgumentException impossible) {
			throw new InputException(chosen.file(), "was not brought in tune: " + impossible.getMessage());
		}
	}

	private static KeySystem read(ChosenSystem chosen, Path file, String text) {
		Shop shop = Shop.open(Language.another(), chosen.shop().shop().files(), Map.of(file, text));
		return shop.document(file).orElseThrow().getSystems().stream()
				.filter(system -> system.getName().equals(chosen.system().getName())).findFirst().orElseThrow();
	}

	/** The lines that change, as a unified diff of the file. */
	List<String> lines() {
		return UnifiedDiff.of(edits, chosen.shop().shop().text(chosen.shop().file()));
	}

	/** @throws InputException if it is the file of the system itself, or cannot be written */
	void write(Path copy) {
		try {
			if (Files.exists(copy) && Files.isSameFile(copy, chosen.file())) {
				throw new InputException(copy, "is the system itself: write to another file and look at it first");
			}
			SafeFile.write(copy, text.getBytes(StandardCharsets.UTF_8));
		} catch (IOException failed) {
			throw new InputException(copy, "was not written: " + Reasons.of(failed));
		}
	}
}
