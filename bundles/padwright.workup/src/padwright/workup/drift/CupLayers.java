package padwright.workup.drift;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.engine.drift.Climate;
import padwright.engine.drift.Layer;
import padwright.engine.length.Length;
import padwright.model.Lengths;
import padwright.model.Resolved;
import padwright.model.keysystem.Titled;
import padwright.model.stock.Material;
import padwright.model.stock.Pad;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.HeightWork;
import padwright.workup.words.Phrase;
import padwright.workup.words.Terms;

/**
 * The layers in one cup from the floor up: backing disc, full shims, pad. The full shims are those noted, or else what
 * they have to sum to. Partial shims are left out: they are thin and do not go around.
 *
 * @param layers all of which at least one constant is known
 * @param unknown all of which one is not
 */
record CupLayers(List<Layer> layers, List<UnknownLayer> unknown) {

	static CupLayers of(KeyJob job, Climate bench, Climate home) {
		Stacking stacking = new Stacking(new ClimateChange(bench, home));
		stacking.stack(job);
		return new CupLayers(List.copyOf(stacking.layers), List.copyOf(stacking.unknown));
	}

	private static final class Stacking {

		private final List<Layer> layers = new ArrayList<>();
		private final List<UnknownLayer> unknown = new ArrayList<>();
		private final ClimateChange change;

		Stacking(ClimateChange change) {
			this.change = change;
		}

		void stack(KeyJob job) {
			job.fitting().backing().ifPresent(disc -> add(Phrase.of("drift.backing"), Resolved.of(disc.getMaterial()),
					Lengths.of(disc.getThickness(), disc)));
			job.fitting().films()
					.ifPresent(films -> add(Phrase.of("drift.fullShims"), Resolved.of(films.getMaterial()), fullShims(job)));
			job.fitting().pad().ifPresentOrElse(this::addPad,
					() -> unknown.add(new UnknownLayer(Phrase.of("drift.pad"), Phrase.of("drift.choice"))));
		}

		private static Optional<Length> fullShims(KeyJob job) {
			return Optional.of(job.stackSum()).filter(noted -> noted.signum() > 0)
					.or(() -> HeightWork.of(job).map(HeightWork::target).filter(target -> target.signum() >= 0));
		}

		private void addPad(Pad pad) {
			pad.getLayers().forEach(layer -> add(Terms.phrase(layer.getRole()), Resolved.of(layer.getMaterial()),
					Lengths.of(layer.getThickness(), layer)));
			Length layered = pad.getLayers().stream()
					.flatMap(layer -> Lengths.of(layer.getThickness(), layer).stream())
					.reduce(Length.ZERO, Length::plus);
			Optional<Length> whole = Lengths.of(pad.getThickness(), pad);
			whole.map(thickness -> thickness.minus(layered)).filter(rest -> rest.signum() > 0)
					.ifPresent(rest -> unknown.add(new UnknownLayer(Phrase.of("drift.restOfPad", rest), Phrase.of("drift.material"))));
			if (pad.getLayers().isEmpty() && whole.isEmpty()) {
				unknown.add(new UnknownLayer(Phrase.of("drift.pad"),
						List.of(Phrase.of("drift.thickness"), Phrase.of("drift.material"))));
			}
		}

		private void add(Phrase place, Optional<Material> material, Optional<Length> thickness) {
			Phrase name = material.map(known -> Phrase.of("drift.layer", place, label(known))).orElse(place);
			if (thickness.isEmpty()) {
				unknown.add(new UnknownLayer(name, Phrase.of("drift.thickness")));
			} else if (material.isEmpty()) {
				unknown.add(new UnknownLayer(name, Phrase.of("drift.material")));
			} else {
				add(name, material.get(), thickness.get());
			}
		}

		private void add(Phrase name, Material material, Length thickness) {
			List<Phrase> missing = change.missing(material);
			if (!missing.isEmpty()) {
				unknown.add(new UnknownLayer(name, missing));
			}
			if (change.tells(material)) {
				layers.add(new Layer(name.words(), thickness, ClimateChange.expansion(material),
						ClimateChange.swelling(material)));
			}
		}

		private static String label(Titled titled) {
			return titled.getLabel() == null ? titled.getName() : titled.getLabel();
		}
	}
}
