package padwright.language.ide.facts;

import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

import padwright.language.ide.words.Messages;

import padwright.model.stock.Adhesive;
import padwright.model.stock.Material;
import padwright.workup.cautions.HazardStatements;

/** The cautions that belong to a material or an adhesive. */
public final class Hazards {

	private Hazards() {
	}

	static List<String> of(Material material) {
		List<String> worded = worded(material.getHazards());
		return material.isAnimal() ? concat(worded, Messages.of("hazard.animal")) : worded;
	}

	static List<String> of(Adhesive adhesive) {
		return worded(adhesive.getHazards());
	}

	private static List<String> worded(Collection<String> codes) {
		return codes.stream().map(Hazards::worded).toList();
	}

	/** A code with its wording, or with a pointer to the data sheet. */
	public static String worded(String code) {
		return "**" + code + "** " + HazardStatements.printed(code).substring(code.length() + 1);
	}

	private static List<String> concat(List<String> lines, String line) {
		return Stream.concat(lines.stream(), Stream.of(line)).toList();
	}
}
