package padwright.exchange.readings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.exchange.csv.CsvRow;
import padwright.exchange.csv.CsvText;
import padwright.exchange.csv.Separator;
import padwright.exchange.readings.ColumnHead.Role;
import padwright.exchange.readings.MeasuredLength.Unit;
import padwright.exchange.tree.ExchangeException;

/**
 * Readings of a digital indicator. Either each row is a key and each column an hour, or each row is one reading with
 * the key, the hour and the figure. Lines before the heads, and columns that tell nothing of this, are passed over.
 */
public final class ReadingsTable {

	private static final char[] SEPARATORS = { ';', '\t', ',' };

	private final List<ColumnHead> heads;
	private final Optional<Unit> usual;
	private final Map<String, Map<ClockHour, Length>> gaps = new LinkedHashMap<>();
	private final Map<String, Integer> lines = new LinkedHashMap<>();

	private ReadingsTable(List<ColumnHead> heads, Optional<Unit> usual) {
		this.heads = heads;
		this.usual = usual;
	}

	/**
	 * The readings by key, in the order of the file.
	 *
	 * @param unit of figures that have none, behind them or in the head of their column
	 * @throws ExchangeException if a reading cannot be understood, or there is none
	 */
	public static List<KeyReadings> read(String text, Optional<LengthUnit> unit) throws ExchangeException {
		for (char separator : SEPARATORS) {
			List<CsvRow> rows = rows(text, separator);
			for (int index = 0; index < rows.size(); index++) {
				List<ColumnHead> heads = rows.get(index).cells().stream().map(ColumnHead::of).toList();
				if (areHeads(heads)) {
					ReadingsTable table = new ReadingsTable(heads, unit.map(known -> new Unit(known, 1)));
					return table.readings(rows.subList(index + 1, rows.size()));
				}
			}
		}
		throw new ExchangeException(1, "no line names the columns; write key and the hours, as in key;12;3;6;9, or key, hour"
				+ " and reading");
	}

	/** Nothing where quotes are out of place for a separator that is not the likeliest. */
	private static List<CsvRow> rows(String text, char separator) throws ExchangeException {
		try {
			return CsvText.read(text, separator);
		} catch (ExchangeException malformed) {
			if (separator == Separator.of(text)) {
				throw malformed;
			}
			return List.of();
		}
	}

	private static boolean areHeads(List<ColumnHead> heads) {
		return column(heads, Role.KEY) >= 0 && column(heads, Role.READING) >= 0
				&& (column(heads, Role.HOUR) >= 0 || heads.stream().anyMatch(head -> head.hour().isPresent()));
	}

	/** The first column of a role, from 0; -1 where there is none. */
	private static int column(List<ColumnHead> heads, Role role) {
		return heads.stream().map(ColumnHead::role).toList().indexOf(role);
	}

	private List<KeyReadings> readings(List<CsvRow> rows) throws ExchangeException {
		for (CsvRow row : rows) {
			add(row);
		}
		if (gaps.isEmpty()) {
			throw new ExchangeException("there is no reading below the heads");
		}
		List<KeyReadings> readings = new ArrayList<>();
		gaps.forEach((key, around) -> readings.add(new KeyReadings(key, around, lines.get(key))));
		return readings;
	}

	private void add(CsvRow row) throws ExchangeException {
		if (row.cells().size() > heads.size()) {
			throw new ExchangeException(row.line(), "there are " + row.cells().size() + " cells under " + heads.size()
					+ " heads; figures with a comma want semicolons between the cells, or quotes");
		}
		String key = row.cell(column(heads, Role.KEY)).strip();
		if (key.isEmpty()) {
			throw new ExchangeException(row.line(), "the row names no key");
		}
		int hours = column(heads, Role.HOUR);
		for (int column = 0; column < heads.size(); column++) {
			ColumnHead head = heads.get(column);
			if (head.role() == Role.READING && !row.cell(column).isBlank()) {
				put(row, key, head.hour().isPresent() ? head.hour() : hour(row, hours),
						MeasuredLength.of(row.cell(column), unit(row, head), row.line()));
			}
		}
	}

	private static Optional<ClockHour> hour(CsvRow row, int column) throws ExchangeException {
		Optional<ClockHour> hour = column < 0 ? Optional.empty() : ColumnHead.hour(row.cell(column));
		if (hour.isEmpty()) {
			throw new ExchangeException(row.line(), "\"" + row.cell(Math.max(column, 0)) + "\" is no hour from 1 to 12.5");
		}
		return hour;
	}

	private Optional<Unit> unit(CsvRow row, ColumnHead head) throws ExchangeException {
		int column = column(heads, Role.UNIT);
		String written = column < 0 ? "" : row.cell(column).strip();
		if (written.isEmpty()) {
			return head.unit().or(() -> usual);
		}
		return Optional.of(MeasuredLength.unit(written).orElseThrow(() -> new ExchangeException(row.line(),
				MeasuredLength.notOne(written))));
	}

	private void put(CsvRow row, String key, Optional<ClockHour> hour, Length gap) throws ExchangeException {
		lines.putIfAbsent(key, row.line());
		if (gaps.computeIfAbsent(key, unseen -> new LinkedHashMap<>()).put(hour.orElseThrow(), gap) != null) {
			throw new ExchangeException(row.line(),
					key + " is read twice at " + hour.orElseThrow() + "; take the older reading away");
		}
	}
}
