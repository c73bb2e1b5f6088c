package padwright.workup.rules;

import static padwright.workup.rules.PropertyType.NUMBER;
import static padwright.workup.rules.PropertyType.TEMPERATURE;
import static padwright.workup.rules.PropertyType.YEARS;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import padwright.model.Lengths;
import padwright.model.Resolved;
import padwright.model.stock.Adhesive;
import padwright.model.stock.FilmSet;
import padwright.model.stock.Layer;
import padwright.model.stock.LayerRole;
import padwright.model.stock.Material;
import padwright.model.stock.Backing;
import padwright.model.stocks.PadFigures;
import padwright.workup.service.EffectiveFitting;
import padwright.workup.service.KeyJob;

/** What rules can ask about pad, backing disc, film and glue, and what these are made of. */
final class FittingProperties {

	private FittingProperties() {
	}

	static List<RuleProperty> all() {
		PropertyList list = new PropertyList(false);
		addPad(list);
		addMaterials(list);
		list.named("backing", job -> job.fitting().backing());
		list.materials("backing.material", job -> job.fitting().backing().map(Backing::getMaterial).stream());
		list.named("shim", job -> job.fitting().films());
		list.materials("shim.material", job -> job.fitting().films().map(FilmSet::getMaterial).stream());
		list.named("glue", job -> job.fitting().adhesive());
		list.quantity("glue.softens", TEMPERATURE, job -> job.fitting().adhesive()
				.flatMap(glue -> Optional.ofNullable(glue.getSoftens())).map(range -> range.low()));
		list.length("glue.fills", job -> job.fitting().adhesive()
				.flatMap((Adhesive glue) -> Lengths.of(glue.getFills(), glue)));
		list.names("glue.hazard", List.of(), job -> job.fitting().adhesive().stream()
				.flatMap(glue -> glue.getHazards().stream()));
		return list.properties();
	}

	private static void addPad(PropertyList list) {
		list.named("pad", job -> job.fitting().pad());
		list.named(RuleProperty.PAD_KIND, job -> job.fitting().pad().flatMap(pad -> Resolved.of(pad.getKind())));
		list.materials("pad.material", job -> layers(job, LayerRole.values()));
		list.materials("pad.base", job -> layers(job, LayerRole.BASE));
		list.materials("pad.face", job -> layers(job, LayerRole.FACE));
		list.materials("pad.skin", job -> layers(job, LayerRole.SKIN));
		list.length("pad.thick", job -> job.fitting().pad().flatMap(pad -> Lengths.of(pad.getThickness(), pad)));
		list.quantity("pad.stiffness", NUMBER, job -> job.fitting().pad().flatMap(PadFigures::stiffness));
		list.quantity("pad.price", NUMBER, job -> job.fitting().pad()
				.flatMap(pad -> Optional.ofNullable(pad.getPrice())));
		list.quantity("pad.lasts", YEARS, job -> layers(job, LayerRole.values())
				.flatMap(material -> Resolved.of(material).stream())
				.flatMap(material -> Optional.ofNullable(material.getLasts()).stream())
				.min(Comparator.naturalOrder()));
	}

	private static void addMaterials(PropertyList list) {
		list.materials("material", job -> materials(job.fitting()));
		list.mark("material.origin", "animal", job -> materials(job.fitting()).anyMatch(Material::isAnimal));
		list.names("material.hazard", List.of(),
				job -> materials(job.fitting()).flatMap(material -> material.getHazards().stream()));
	}

	private static Stream<Material> layers(KeyJob job, LayerRole... roles) {
		return job.fitting().pad().stream().flatMap(pad -> pad.getLayers().stream())
				.filter(layer -> Arrays.asList(roles).contains(layer.getRole())).map(Layer::getMaterial);
	}

	/** All that is in the cup but the glue. */
	private static Stream<Material> materials(EffectiveFitting fitting) {
		Stream<Material> layers = fitting.pad().stream().flatMap(pad -> pad.getLayers().stream())
				.map(Layer::getMaterial);
		Stream<Material> beds = Stream.concat(fitting.backing().map(Backing::getMaterial).stream(),
				fitting.films().map(FilmSet::getMaterial).stream());
		return Stream.concat(layers, beds).flatMap(material -> Resolved.of(material).stream());
	}
}
