package padwright.views.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.model.Lengths;
import padwright.model.Resolved;
import padwright.model.stock.Layer;
import padwright.model.stock.Pad;
import padwright.views.Messages;
import padwright.workup.parts.Labels;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.HeightWork;

/**
 * What lies in a cup. Partial shims are left out: they do not go around.
 *
 * @param seat how far the rim sinks into the face
 */
record CupContents(List<SectionLayer> layers, Length seat) {

	static CupContents of(KeyJob job) {
		List<SectionLayer> layers = new ArrayList<>();
		job.fitting().backing().ifPresent(disc -> add(layers, SectionLayer.Kind.BACKING,
				Messages.of("section.backing"), Lengths.of(disc.getThickness(), disc)));
		addShims(job, layers);
		Optional<Pad> pad = job.fitting().pad();
		pad.ifPresent(article -> addPad(article, layers));
		return new CupContents(List.copyOf(layers),
				pad.flatMap(article -> Lengths.of(article.getSinks(), article)).orElse(Length.ZERO));
	}

	private static void addShims(KeyJob job, List<SectionLayer> layers) {
		String film = job.fitting().films().map(Labels::of).orElse("");
		job.stack().forEach(shim -> add(layers, SectionLayer.Kind.SHIM, Messages.of("section.shim", film),
				Optional.of(shim)));
		if (job.stack().isEmpty()) {
			add(layers, SectionLayer.Kind.MISSING_SHIMS, Messages.of("section.shimsToCome"),
					HeightWork.of(job).map(HeightWork::target));
		}
	}

	private static void addPad(Pad pad, List<SectionLayer> layers) {
		Length layered = Length.ZERO;
		Optional<Length> whole = Lengths.of(pad.getThickness(), pad);
		List<SectionLayer> own = new ArrayList<>();
		for (Layer layer : pad.getLayers()) {
			Optional<Length> thickness = Lengths.of(layer.getThickness(), layer);
			String material = Resolved.of(layer.getMaterial()).map(Labels::of).orElse("");
			add(own, kind(layer), Messages.of("section." + layer.getRole().getLiteral(), material), thickness);
			layered = layered.plus(thickness.orElse(Length.ZERO));
		}
		Length known = layered;
		int place = own.isEmpty() || own.get(0).kind() != SectionLayer.Kind.BASE ? 0 : 1;
		whole.map(thickness -> thickness.minus(known)).filter(rest -> rest.signum() > 0).ifPresent(rest -> own
				.add(place, new SectionLayer(SectionLayer.Kind.PAD, Labels.of(pad), rest)));
		layers.addAll(own);
	}

	private static SectionLayer.Kind kind(Layer layer) {
		return switch (layer.getRole()) {
		case BASE -> SectionLayer.Kind.BASE;
		case FACE -> SectionLayer.Kind.FACE;
		case SKIN -> SectionLayer.Kind.SKIN;
		};
	}

	private static void add(List<SectionLayer> layers, SectionLayer.Kind kind, String name,
			Optional<Length> thickness) {
		thickness.filter(known -> known.signum() > 0)
				.ifPresent(known -> layers.add(new SectionLayer(kind, name, known)));
	}
}
