package padwright.commands;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

import padwright.workup.next.NextStep;
import padwright.workup.next.NextSteps;

/** What is next, for programs; days as in 2026-03-02. */
final class NextJson {

	private NextJson() {
	}

	static Map<String, Object> of(NextSteps next) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("on", next.today().toString());
		json.put("steps", next.steps().stream().map(step -> step(step, next)).toList());
		json.put("plansWithoutJob", next.silent());
		return json;
	}

	private static String word(NextStep.Kind kind) {
		return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

	private static Map<String, Object> step(NextStep step, NextSteps next) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("plan", step.plan());
		json.put("instrument", step.instrument());
		json.put("player", step.player());
		json.put("stage", step.stage());
		json.put("kind", word(step.kind()));
		step.heldBy().ifPresent(kind -> json.put("heldBy", word(kind)));
		json.put("what", step.what().words());
		json.put("keys", step.keys());
		step.from().ifPresent(day -> json.put("from", day.toString()));
		step.due().ifPresent(day -> json.put("due", day.toString()));
		step.hand().ifPresent(hand -> json.put("by", hand));
		json.put("ready", step.isReady(next.today()));
		json.put("late", step.isLate(next.today()));
		return json;
	}
}
