package padwright.views;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BinaryOperator;
import java.util.stream.Stream;

import com.google.inject.Injector;

import padwright.language.PadwrightStandaloneSetup;
import padwright.language.shop.Shop;
import padwright.model.plan.Document;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;

/**
 * A plan as a page of the guide shows it, beside the stock and the systems of the example shop.
 *
 * @param document its file
 * @param plan the first one in it
 */
record GuidePlan(Document document, ServicePlan plan) {

	private static final Injector LANGUAGE = PadwrightStandaloneSetup.doSetup();
	private static final Path EXAMPLES = Path.of("..", "..", "examples", "shop").toAbsolutePath().normalize();
	private static final List<String> SHOP = List.of("systems/boehm.keys", "stock/bench.stock", "stock/rules.stock",
			"stock/processes.stock");

	/** A plan that a page shows, as it stands there last, with the systems that the page shows. */
	static GuidePlan onPage(String page, String file) throws IOException {
		return shown(page, file, (before, again) -> again);
	}

	/** As it stands there first. */
	static GuidePlan first(String page, String file) throws IOException {
		return shown(page, file, (before, again) -> before);
	}

	private static GuidePlan shown(String page, String file, BinaryOperator<String> chosen) throws IOException {
		Map<String, String> shown = new LinkedHashMap<>();
		GuideText.examples(page).stream().filter(example -> example.file().endsWith(".keys") || example.file().equals(file))
				.forEach(example -> shown.merge(example.file(), example.text(), chosen));
		return of(shown, file);
	}

	/** A plan with one row, for the flute and with the stock of the example shop. */
	static GuidePlan ofRow(String fit, String hours, String row) {
		return of(Map.of("row.plan", "plan Row for BoehmC with Bench {\n\tseat within 0.5 thou\n\tfit " + fit + "\n\tread at "
				+ hours + "\n\t" + row + "\n}\n"), "row.plan");
	}

	private static GuidePlan of(Map<String, String> shown, String file) {
		Map<Path, String> open = new LinkedHashMap<>();
		shown.forEach((name, text) -> open.put(EXAMPLES.resolve(name), text));
		List<Path> files = Stream.concat(SHOP.stream().map(EXAMPLES::resolve), open.keySet().stream()).toList();
		Document document = Shop.open(LANGUAGE, files, open).document(EXAMPLES.resolve(file)).orElseThrow();
		return new GuidePlan(document, new ServicePlan(document.getPlans().get(0)));
	}

	KeyJob row(String key) {
		return plan.jobs().stream().filter(job -> job.name().equals(key)).findFirst().orElseThrow();
	}
}
