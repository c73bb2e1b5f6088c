package example;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.exchange.readings.KeyReadings;
import padwright.exchange.readings.ReadingsFormat;
import padwright.exchange.tree.ExchangeException;

/** What an invented dial writes: key, hour and figure on each line, parted by blanks. */
public final class DialReadings implements ReadingsFormat {

	@Override
	public String name() {
		return "dial";
	}

	@Override
	public String title() {
		return "Dial";
	}

	@Override
	public List<KeyReadings> read(String content, Optional<LengthUnit> unit) throws ExchangeException {
		Map<String, Map<ClockHour, Length>> gaps = new LinkedHashMap<>();
		Map<String, Integer> lines = new LinkedHashMap<>();
		List<String> all = content.lines().toList();
		for (int line = 1; line <= all.size(); line++) {
			String[] words = all.get(line - 1).strip().split("\\s+");
			if (words.length == 3) {
				lines.putIfAbsent(words[0], line);
				gaps.computeIfAbsent(words[0], key -> new LinkedHashMap<>()).put(hour(words[1], line),
						length(words[2], unit.orElse(LengthUnit.THOU), line));
			}
		}
		if (gaps.isEmpty()) {
			throw new ExchangeException("it holds no reading");
		}
		List<KeyReadings> readings = new ArrayList<>();
		gaps.forEach((key, found) -> readings.add(new KeyReadings(key, found, lines.get(key))));
		return readings;
	}

	private static ClockHour hour(String word, int line) throws ExchangeException {
		try {
			return ClockHour.ofHour(new BigDecimal(word));
		} catch (IllegalArgumentException none) {
			throw new ExchangeException(line, word + " is no hour");
		}
	}

	private static Length length(String word, LengthUnit unit, int line) throws ExchangeException {
		try {
			return Length.of(new BigDecimal(word), unit);
		} catch (ArithmeticException | NumberFormatException none) {
			throw new ExchangeException(line, word + " is no figure");
		}
	}
}
