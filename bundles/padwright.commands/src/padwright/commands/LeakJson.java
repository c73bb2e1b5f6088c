package padwright.commands;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import padwright.engine.leak.InstrumentLeak;
import padwright.engine.leak.KeyLeak;
import padwright.engine.leak.LeakComparison;
import padwright.engine.leak.LikelyFlow;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.workup.leak.PlanLeak;
import padwright.workup.leak.UnknownLeak;

/** Leaks for programs: flow in mL/min, holes as diameters in mm, the worst key before first. */
final class LeakJson {

	private static final int NANOMETRES = 6;

	private LeakJson() {
	}

	static Map<String, Object> of(PlanLeak leak, BigDecimal celsius) {
		LeakComparison comparison = leak.comparison();
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("plan", leak.plan().plan().getName());
		json.put("pressure", comparison.before().tester().pascals());
		json.put("temperature", celsius);
		json.put("before", total(comparison.before()));
		json.put("after", total(comparison.after()));
		json.put("keys", comparison.rows().stream().map(row -> key(row, leak)).toList());
		json.put("leftOut", leak.felt().leftOut().stream().map(LeakJson::leftOut).toList());
		return json;
	}

	private static Map<String, Object> total(InstrumentLeak leak) {
		return flow(leak.all(), leak.equivalentHole());
	}

	private static Map<String, Object> key(LeakComparison.Row row, PlanLeak leak) {
		List<KeyLeak> rankedAfter = leak.comparison().after().ranked();
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("key", row.before().key());
		json.put("before", flow(row.before().flow(), row.before().equivalentHole()));
		json.put("after", flow(row.after().flow(), row.after().equivalentHole()));
		json.put("rankAfter", rankedAfter.indexOf(row.after()) + 1);
		json.put("rimWidthAssumed", leak.felt().assumedWidths().contains(row.before().key()));
		return json;
	}

	private static Map<String, Object> flow(LikelyFlow flow, Length hole) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("millilitresPerMinute", flow.expected());
		json.put("low", flow.low());
		json.put("high", flow.high());
		json.put("hole", hole.in(LengthUnit.MILLIMETRE, NANOMETRES));
		return json;
	}

	private static Map<String, Object> leftOut(UnknownLeak key) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("key", key.key());
		json.put("why", key.why().words());
		return json;
	}
}
