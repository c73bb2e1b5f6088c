package padwright.workup.cautions;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import padwright.model.Resolved;
import padwright.model.stock.Adhesive;
import padwright.model.stock.FilmSet;
import padwright.model.stock.Material;
import padwright.model.stock.Backing;
import padwright.workup.service.EffectiveFitting;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Messages;

/** The cautions that belong on a paper about a plan: for what it names, and for the bench in general. */
public final class Cautions {

	private Cautions() {
	}

	/** What every caution gives way to. */
	static String dataSheets() {
		return Messages.of("caution.dataSheets");
	}

	private static List<String> always() {
		return List.of(Messages.of("caution.saliva"), Messages.of("caution.neverFile"), dataSheets());
	}

	/** For all work at the bench: one line each, those for the materials and adhesives first. */
	public static List<String> of(ServicePlan plan) {
		return with(ofFittings(plan), always());
	}

	/** For a paper that names pads, discs, film and glue, but no work. */
	public static List<String> ofMaterials(ServicePlan plan) {
		return with(ofFittings(plan), List.of(dataSheets()));
	}

	/** For a paper that names film alone. */
	public static List<String> ofFilm(ServicePlan plan) {
		Set<String> cautions = new LinkedHashSet<>();
		plan.jobs().stream().flatMap(job -> job.fitting().films().stream())
				.flatMap(films -> Resolved.of(films.getMaterial()).stream())
				.forEach(material -> addMaterial(material, cautions));
		return with(cautions, List.of(dataSheets()));
	}

	/** The hazard statements alone of what is fitted and glued, for who gets the instrument back. */
	public static List<String> hazardsOf(ServicePlan plan) {
		Set<String> hazards = new LinkedHashSet<>();
		for (KeyJob job : plan.jobs()) {
			job.fitting().adhesive().ifPresent(glue -> addHazards(label(glue.getLabel(), glue.getName()),
					glue.getHazards(), hazards));
			materials(job.fitting()).forEach(material -> addHazards(label(material.getLabel(), material.getName()),
					material.getHazards(), hazards));
		}
		return List.copyOf(hazards);
	}

	private static Set<String> ofFittings(ServicePlan plan) {
		Set<String> cautions = new LinkedHashSet<>();
		List<EffectiveFitting> fittings = plan.jobs().stream().map(KeyJob::fitting).toList();
		fittings.stream().flatMap(fitting -> fitting.adhesive().stream())
				.forEach(adhesive -> addAdhesive(adhesive, cautions));
		fittings.stream().flatMap(Cautions::materials).forEach(material -> addMaterial(material, cautions));
		return cautions;
	}

	private static List<String> with(Set<String> cautions, List<String> general) {
		return Stream.concat(cautions.stream(), general.stream()).toList();
	}

	private static Stream<Material> materials(EffectiveFitting fitting) {
		Stream<Material> layers = fitting.pad().stream().flatMap(pad -> pad.getLayers().stream())
				.map(layer -> layer.getMaterial());
		Stream<Material> beds = Stream.concat(fitting.backing().map(Backing::getMaterial).stream(),
				fitting.films().map(FilmSet::getMaterial).stream());
		return Stream.concat(layers, beds).flatMap(material -> Resolved.of(material).stream());
	}

	private static void addAdhesive(Adhesive adhesive, Set<String> cautions) {
		addHazards(label(adhesive.getLabel(), adhesive.getName()), adhesive.getHazards(), cautions);
		if (adhesive.getSoftens() != null) {
			cautions.add(Messages.of("caution.softens", label(adhesive.getLabel(), adhesive.getName()),
					adhesive.getSoftens()));
		}
	}

	private static void addMaterial(Material material, Set<String> cautions) {
		String label = label(material.getLabel(), material.getName());
		addHazards(label, material.getHazards(), cautions);
		if (material.isAnimal()) {
			cautions.add(Messages.of("caution.animal", label));
		}
	}

	private static void addHazards(String label, Collection<String> codes, Set<String> cautions) {
		if (!codes.isEmpty()) {
			List<String> wordings = new TreeSet<>(codes).stream()
					.map(HazardStatements::printed).toList();
			cautions.add(label + ": " + String.join(" ", wordings));
		}
	}

	private static String label(String label, String name) {
		return label == null ? name : label;
	}
}
