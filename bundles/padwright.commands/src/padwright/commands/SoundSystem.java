package padwright.commands;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import padwright.language.shop.ShopFinding;
import padwright.model.keysystem.KeySystem;
import padwright.workup.checks.Severity;
import padwright.workup.sound.MissingSize;
import padwright.workup.sound.SystemSound;

/** From a chosen system to its sound, or to what it lacks for that. */
final class SoundSystem {

	private SoundSystem() {
	}

	/**
	 * @param err told the errors of the file, and each size that is missing
	 * @throws InputException if the system has no air column or nothing to sound
	 */
	static SystemSound of(ChosenSystem chosen, PrintWriter err) {
		FindingLines.print(err, chosen.errors());
		return of(chosen.system(), chosen.file(), err);
	}

	/**
	 * @param file in which the system, or the plan for it, is written
	 * @param err told each size that is missing
	 * @throws InputException if the system has no air column or nothing to sound
	 */
	static SystemSound of(KeySystem system, Path file, PrintWriter err) {
		SystemSound sound = SystemSound.of(system);
		List<MissingSize> missing = sound.missing();
		if (!missing.isEmpty()) {
			FindingLines.print(err, missing.stream().map(size -> finding(file, size)).distinct().toList());
			throw new InputException(file, "does not say all that sound needs of " + system.getName() + ": see above");
		}
		if (sound.tones().isEmpty()) {
			throw new InputException(file, "holds no fingering of " + system.getName()
					+ " that can sound: write note and its touches, as in note D4 : T L1 L2 L3 R1 R2 R3");
		}
		return sound;
	}

	/** Where the part is written, which for an inherited one may be in another file. */
	private static ShopFinding finding(Path chosen, MissingSize size) {
		URI uri = size.element().eResource().getURI();
		Path file = uri.isFile() ? Path.of(uri.toFileString()) : chosen;
		int offset = NodeModelUtils.findActualNodeFor(size.element()).getOffset();
		var at = NodeModelUtils.getLineAndColumn(NodeModelUtils.findActualNodeFor(size.element()), offset);
		return new ShopFinding(file, at.getLine(), at.getColumn(), Severity.ERROR, MissingSize.CODE,
				size.advice().inOneLine());
	}
}
