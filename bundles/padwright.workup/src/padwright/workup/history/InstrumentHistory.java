package padwright.workup.history;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import padwright.workup.forecast.PastService;

/**
 * One instrument of one player over the years.
 *
 * @param instrument its serial number, or its key system
 * @param player     whose it is
 * @param services   days of service, oldest first
 * @param keys       in the order of the key system, the pads of one key one after the other
 */
public record InstrumentHistory(String instrument, String player, List<LocalDate> services, List<KeyHistory> keys) {

	public InstrumentHistory {
		services = List.copyOf(services);
		keys = List.copyOf(keys);
	}

	/** From all services of the instrument, at least one, oldest first. */
	static InstrumentHistory of(List<PastService> services) {
		Map<String, KeyStory> stories = new LinkedHashMap<>();
		PastService newest = services.get(services.size() - 1);
		newest.plan().system().keys().forEach(key -> stories.put(key.name(), new KeyStory()));
		for (PastService service : services) {
			service.plan().jobs().stream().filter(job -> job.key().isPresent()).forEach(job -> stories
					.computeIfAbsent(job.name(), unseen -> new KeyStory()).add(service.date(), job));
		}
		return new InstrumentHistory(newest.instrument(), newest.player(),
				services.stream().map(PastService::date).distinct().toList(),
				stories.values().stream().flatMap(story -> story.told().stream()).toList());
	}
}
