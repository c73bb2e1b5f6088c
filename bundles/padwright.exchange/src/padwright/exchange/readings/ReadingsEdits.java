package padwright.exchange.readings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.conversion.IValueConverterService;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.exchange.tree.ExchangeException;
import padwright.language.edit.EmptyCupEdits;
import padwright.language.edit.TextEdit;
import padwright.model.LengthText;
import padwright.model.plan.KeyService;
import padwright.model.systems.EffectiveKey;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.NearestName;

/** Puts measured gaps into the rows of a plan, as those of the empty cups, and touches nothing else in it. */
public final class ReadingsEdits {

	private static final String EMPTY = " empty ";

	private final ServicePlan plan;
	private final IValueConverterService converters;
	private final boolean replace;

	private ReadingsEdits(ServicePlan plan, IValueConverterService converters, boolean replace) {
		this.plan = plan;
		this.converters = converters;
		this.replace = replace;
	}

	/**
	 * The edits that note {@code readings} in a plan that was read from a text. A key without a row gets one.
	 *
	 * @param replace whether gaps that the plan holds already give way
	 * @throws ExchangeException if a key is unknown, an hour is missing or too much, or a gap is there already
	 */
	public static List<TextEdit> of(ServicePlan plan, List<KeyReadings> readings, IValueConverterService converters,
			boolean replace) throws ExchangeException {
		return new ReadingsEdits(plan, converters, replace).edits(readings);
	}

	private List<TextEdit> edits(List<KeyReadings> readings) throws ExchangeException {
		if (plan.plan().getHours().isEmpty()) {
			throw new ExchangeException("the plan does not say at which hours it reads; write read at 12 1.5 3 4.5 6 7.5 9 10.5");
		}
		List<TextEdit> edits = new ArrayList<>();
		List<String> newRows = new ArrayList<>();
		List<EffectiveKey> seen = new ArrayList<>();
		for (KeyReadings each : readings) {
			EffectiveKey key = key(each);
			if (seen.contains(key)) {
				throw new ExchangeException(each.line(), key.label() + " has readings under two names; keep one");
			}
			seen.add(key);
			Optional<KeyService> row = plan.plan().getKeys().stream()
					.filter(service -> service.getKey() == key.definition()).findFirst();
			if (row.isPresent()) {
				edits.addAll(edits(row.get(), each));
			} else {
				newRows.add("key " + converters.toString(key.name(), "ID") + EMPTY
						+ LengthText.row(around(each), plan.plan()));
			}
		}
		if (!newRows.isEmpty()) {
			// Before an edit at the end of the last row: what is applied first at a place ends up behind.
			edits.add(0, inserted(newRows));
		}
		return edits;
	}

	/** By name or label; else, where just one is meant, whatever the case and with # for a sharp. */
	private EffectiveKey key(KeyReadings readings) throws ExchangeException {
		String written = readings.key();
		Stream<Predicate<EffectiveKey>> ways = Stream.of(key -> key.name().equals(written),
				key -> key.label().equals(written), key -> plain(key.name()).equals(plain(written)),
				key -> plain(key.label()).equals(plain(written)));
		return ways.map(way -> plan.system().keys().stream().filter(way).toList()).filter(found -> found.size() == 1)
				.findFirst().map(found -> found.get(0))
				.orElseThrow(() -> new ExchangeException(readings.line(), "the system has no key \"" + written
						+ "\"; did you mean \"" + NearestName.among(names(), written) + "\"?"));
	}

	private List<String> names() {
		return plan.system().keys().stream().flatMap(key -> Stream.of(key.name(), key.label())).toList();
	}

	private static String plain(String name) {
		return name.toLowerCase(Locale.ROOT).replace('#', '♯');
	}

	/** In the order of the plan's hours. */
	private List<Length> around(KeyReadings readings) throws ExchangeException {
		List<ClockHour> hours = plan.plan().getHours();
		Map<ClockHour, Length> gaps = readings.gaps();
		for (ClockHour hour : gaps.keySet()) {
			if (!hours.contains(hour)) {
				throw wrongHour(readings, "is read at " + hour + ", where the plan does not read");
			}
		}
		List<Length> around = new ArrayList<>();
		for (ClockHour hour : hours) {
			if (!gaps.containsKey(hour)) {
				throw wrongHour(readings, "has no reading at " + hour);
			}
			around.add(gaps.get(hour));
		}
		return around;
	}

	private ExchangeException wrongHour(KeyReadings readings, String what) {
		return new ExchangeException(readings.line(), readings.key() + " " + what + "; the plan reads at "
				+ plan.plan().getHours().stream().map(ClockHour::toString).collect(Collectors.joining(" ")));
	}

	private List<TextEdit> edits(KeyService row, KeyReadings readings) throws ExchangeException {
		List<TextEdit> edits = EmptyCupEdits.gaps(row, around(readings));
		if (!edits.isEmpty() && row.getEmpty() != null && !replace) {
			throw new ExchangeException(readings.line(), "the plan holds gaps of " + readings.key() + " already, in line "
					+ NodeModelUtils.findActualNodeFor(row.getEmpty()).getStartLine() + "; take them away, or say --replace");
		}
		return edits;
	}

	/** Behind the last row; in a plan without rows before what follows them. */
	private TextEdit inserted(List<String> rows) {
		List<KeyService> present = plan.plan().getKeys();
		if (!present.isEmpty()) {
			return new TextEdit(end(NodeModelUtils.findActualNodeFor(present.get(present.size() - 1))), 0,
					rows.stream().map(row -> "\n\t" + row).collect(Collectors.joining()));
		}
		String lines = rows.stream().map(row -> row + "\n").collect(Collectors.joining("\t"));
		List<? extends EObject> after = plan.plan().getRegulations();
		if (!after.isEmpty()) {
			return new TextEdit(NodeModelUtils.findActualNodeFor(after.get(0)).getOffset(), 0, lines + "\t");
		}
		return new TextEdit(end(NodeModelUtils.findActualNodeFor(plan.plan())) - 1, 0, "\t" + lines);
	}

	private static int end(INode node) {
		return node.getOffset() + node.getLength();
	}
}
