package padwright.workup.forecast;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

import padwright.engine.forecast.AgedMaterial;
import padwright.model.Resolved;
import padwright.model.stock.FilmSet;
import padwright.model.stock.Layer;
import padwright.model.stock.Material;
import padwright.model.stock.Backing;
import padwright.workup.service.EffectiveFitting;
import padwright.workup.service.KeyJob;

/**
 * What lies in the cups of one instrument, and since when. A row of a plan fits a new pad at its first
 * appearance, and where {@link PastService#isNewPad} says so. Changes; for one thread.
 */
final class FittedPads {

	/** Beyond any plan, and within the years that a day can have. */
	private static final BigDecimal LONGEST = BigDecimal.valueOf(1000);

	private record Fitted(String label, LocalDate date, EffectiveFitting fitting) {
	}

	private record Batch(Material material, LocalDate date) {
	}

	private final Map<String, Fitted> byKey = new LinkedHashMap<>();

	/** To be told the services of the instrument oldest first. */
	void add(PastService service) {
		for (KeyJob job : service.plan().jobs()) {
			if (job.key().isPresent() && (!byKey.containsKey(job.name()) || PastService.isNewPad(job))) {
				byKey.put(job.name(), new Fitted(job.key().get().label(), service.date(), job.fitting()));
			}
		}
	}

	/** All materials whose age has a limit, keys of one age together. */
	List<AgedPads> aged(String instrument, String player) {
		Map<Batch, List<String>> keys = new LinkedHashMap<>();
		byKey.values().forEach(fitted -> limited(fitted.fitting()).forEach(material -> keys
				.computeIfAbsent(new Batch(material, fitted.date()), batch -> new ArrayList<>()).add(fitted.label())));
		return keys.entrySet().stream()
				.map(batch -> new AgedPads(instrument, player, aged(batch.getKey()), batch.getValue())).toList();
	}

	private static AgedMaterial aged(Batch batch) {
		Material material = batch.material();
		return new AgedMaterial(material.getLabel() == null ? material.getName() : material.getLabel(), batch.date(),
				material.getLasts().min(LONGEST).max(BigDecimal.ONE).intValue());
	}

	/** Each material once, although it may be in several layers. */
	private static Set<Material> limited(EffectiveFitting fitting) {
		Set<Material> limited = new LinkedHashSet<>();
		Stream<Material> layers = fitting.pad().stream().flatMap(pad -> pad.getLayers().stream())
				.map(Layer::getMaterial);
		Stream<Material> bed = Stream.concat(fitting.backing().map(Backing::getMaterial).stream(),
				fitting.films().map(FilmSet::getMaterial).stream());
		Stream.concat(layers, bed).flatMap(material -> Resolved.of(material).stream())
				.filter(material -> material.getLasts() != null).forEach(limited::add);
		return limited;
	}
}
