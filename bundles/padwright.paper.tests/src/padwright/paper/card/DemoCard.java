package padwright.paper.card;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import padwright.drawing.clock.RimReading;
import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.GapBand;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.rim.RimProfile;
import padwright.paper.page.PageFact;

/** An invented job on an invented Boehm flute with a C foot: 17 pads (the number is common practice, no source). */
public final class DemoCard {

	private static final int[] FOUR_HOURS = {12, 3, 6, 9};

	private DemoCard() {
	}

	public static BenchCard boehmFlute() {
		return new BenchCard("Bench card", "Boehm flute, C foot", "A-1042", "Spring",
				Optional.of(LocalDate.of(2026, 3, 20)), facts(), "hinge", keys(), regulations(), diary(), cautions());
	}

	private static List<BenchCard.DiaryLine> diary() {
		return List.of(new BenchCard.DiaryLine("2026-03-18 K", "Came in: low notes need pressure"),
				new BenchCard.DiaryLine("2026-03-19 L", "Spring D♯: steel, replaced, left 36 grams"),
				new BenchCard.DiaryLine("", "Tenon foot: expanded on a mandrel, 1 thou"));
	}

	private static List<PageFact> facts() {
		return List.of(new PageFact("key system", "BoehmC"), new PageFact("stock", "Bench"),
				new PageFact("seat tolerance", "0.5 thou"), new PageFact("bed (full shims)", "13 to 16 thou"),
				new PageFact("pads unless noted", "Rigid 98 thou on Disc20, film Clear"),
				new PageFact("finest leaf", "half-thou tape"));
	}

	private static List<String> cautions() {
		return List.of(
				"Thin glue bonds skin and gives off vapour: ventilate, wear eye protection, keep it from children.",
				"Naphtha and alcohol burn: no flame, no spark, lid on.",
				"Bladder skin and felt are animal products: allergies, import rules. Used instruments carry saliva:"
						+ " clean hands and tools.",
				"The supplier's safety data sheet, local rules and licensed practice come first.");
	}

	private static List<CardRegulation> regulations() {
		return List.of(new CardRegulation("F", "F♯", "0.5 light at driven", "screw in by 0.06 turn"),
				new CardRegulation("F", "A♯", "closes together", ""),
				new CardRegulation("E", "F♯", "1 light at driver", "screw out by 0.11 turn"),
				new CardRegulation("D", "F♯", "", ""),
				new CardRegulation("A", "A♯", "0.5 light at driver", "0.5 film under the adjuster"));
	}

	private static List<CardKey> keys() {
		List<CardKey> keys = new ArrayList<>();
		keys.add(solved("Fs", "F♯", "14.6: 7.5 5 2", ". 0.5 . 1", profile(0.55, 0.2, 9, 0.42, 3),
				List.of(shim("0.5", 2, 4), shim("1", 8, 10)), "12 %", "71 %", List.of(), List.of()));
		keys.add(solved("As", "A♯", "15: 7.5 7.5", ". . . .", profile(0.15, 0.1, 2, 0.05, 1), List.of(), "48 %", "77 %",
				List.of(), List.of()));
		keys.add(solved("F", "F", "15: 7.5 7.5", "0.5 . . .", profile(0.3, 0.3, 12, 0.08, 0),
				List.of(shim("0.5", 11, 2)), "28 %", "77 %", List.of(), List.of("F♯", "A♯")));
		keys.add(solved("E", "E", "14.2: 7.5 5 1.5", "1 0.5 . 0.5", profile(0.7, 0.5, 12, 0.1, 0),
				List.of(shim("1", 10, 2)), "12 %", "65 %", List.of(), List.of("F♯")));
		keys.add(solved("D", "D", "14.9: 7.5 5 2 0.5", ". 1.5 . 1.5", profile(0.95, 0.05, 3, 0.85, 3),
				List.of(shim("1.5", 1, 5), shim("1.5", 7, 11)), "3 %", "65 %",
				List.of(CardNote.remark("A saddle across 3 and 9: floating cannot cure it, film can.")),
				List.of("F♯")));
		keys.add(solved("A", "A", "14.5: 7.5 5 2", ". . 0.5 .", profile(0.3, 0.25, 6, 0.1, 0),
				List.of(shim("0.5", 5, 7)), "36 %", "83 %", List.of(), List.of("A♯")));
		keys.add(solved("G", "G", "14: 7.5 5 1.5", ". 0.5 1 .", profile(0.5, 0.45, 5, 0.1, 5),
				List.of(shim("0.5", 3, 7), shim("0.5", 4, 6)), "16 %", "71 %", List.of(), List.of("G lower")));
		keys.add(bent());
		keys.add(key("G2", "G lower", "", "", "14: 7.5 5 1.5", ". . . 0.5", profile(0.25, 0.2, 9, 0.05, 0),
				List.of(shim("0.5", 8, 10)), "40 %", "77 %"));
		keys.add(key("B", "B thumb", "", "", "13.6: 7.5 5 1", ". . . .", profile(0.1, 0.08, 1, 0.04, 0), List.of(),
				"52 %", "83 %"));
		keys.add(key("Bb", "B♭ thumb", "", "", "13.5: 7.5 5 1", "0.5 . . .", profile(0.3, 0.25, 12, 0.05, 0),
				List.of(shim("0.5", 11, 1)), "36 %", "77 %"));
		keys.add(earlier());
		keys.add(key("DTrill", "D trill", "Foam 90 thou, no backing disc", "", "14: 7.5 5 1.5", ". . . .",
				profile(0.1, 0.05, 4, 0.02, 0), List.of(), "56 %", "89 %"));
		keys.add(key("DsTrill", "D♯ trill", "Foam 90 thou, no backing disc", "", "14: 7.5 5 1.5", ". . . .",
				profile(0.1, 0.05, 8, 0.02, 0), List.of(), "56 %", "89 %"));
		keys.add(key("Ds", "D♯", "", "15 15.5 15 15", "15.1: 7.5 7.5", ". 0.5 . .", profile(0.3, 0.3, 3, 0.05, 0),
				List.of(shim("0.5", 2, 5)), "32 %", "77 %"));
		keys.add(twelveReadings());
		keys.add(unread());
		return keys;
	}

	/** A bent cup, which must be put right before it can be solved. */
	private static CardKey bent() {
		return new CardKey("Gs", "G♯", "", "12 15 18 15", Optional.empty(), readings("5 2 . 3", FOUR_HOURS),
				Optional.of(profile(2.6, 2.3, 12, 0.4, 2)), List.of(), Optional.empty(),
				Optional.of(new CardLevel("under 1 %", "4.2 to 5.6 thou at 12", Optional.empty())),
				List.of(CardNote.warning("The empty cup is open by 6 thou front to back: a bent cup or arm."
						+ " True it first and read again.")),
				List.of());
	}

	private static CardKey earlier() {
		CardKey key = key("Cs", "C♯", "", "15 14.5 15 15", "14.9: 7.5 7.5", ". 0.5 . .",
				profile(0.35, 0.25, 3, 0.1, 1), List.of(shim("0.5", 2, 4)), "36 %", "83 %");
		return new CardKey(key.name(), key.label(), key.fitText(), key.emptyText(), key.height(), key.readings(),
				key.gap(), List.of(shim("1", 7, 10), shim("0.5", 11, 1)), Optional.of(new CardWork("+0.5",
						List.of(shim("0.5", 11, 1)), key.pieces())), key.level(), key.notes(),
				key.closes());
	}

	private static CardKey twelveReadings() {
		int[] hours = {12, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11};
		return new CardKey("Cs4", "C♯ foot", "", "15 15 15.5 15", height("15: 7.5 7.5"),
				readings("1.5 1 0.5 . . 0.5 1 0.5 . . 0.5 1", hours), Optional.of(profile(0.75, 0.35, 12, 0.55, 0)),
				List.of(), place(List.of(shim("1", 11, 2), shim("0.5", 12, 1), shim("0.5", 5, 7))),
				level("12 %", "64 %"), List.of(), List.of());
	}

	/** Printed before the first round of readings: to be filled in by hand. */
	private static CardKey unread() {
		List<RimReading> blanks =
				Arrays.stream(FOUR_HOURS).mapToObj(hour -> RimReading.blank(ClockHour.ofHour(hour))).toList();
		return new CardKey("C4", "C foot", "", "", Optional.empty(), blanks, Optional.empty(), List.of(), Optional.empty(),
				Optional.empty(), List.of(), List.of("C♯ foot"));
	}

	private static CardKey key(String name, String label, String fit, String empty, String height, String felt,
			GapBand gap, List<PartialShim> pieces, String before, String after) {
		return new CardKey(name, label, fit, empty, height(height), readings(felt, FOUR_HOURS), Optional.of(gap),
				List.of(), place(pieces), level(before, after), List.of(), List.of());
	}

	private static CardKey solved(String name, String label, String height, String felt, GapBand gap,
			List<PartialShim> pieces, String before, String after, List<CardNote> notes, List<String> closes) {
		return new CardKey(name, label, "", "15 15 14.5 15.5", height(height), readings(felt, FOUR_HOURS),
				Optional.of(gap), List.of(), place(pieces), level(before, after), notes, closes);
	}

	/** Target and shims, as in {@code 14.6: 7.5 5 2}. */
	private static Optional<CardHeight> height(String text) {
		String[] parts = text.split(": ");
		List<Length> shims = Arrays.stream(parts[1].split(" ")).map(Length::thou).toList();
		return Optional.of(new CardHeight(Optional.of(Length.thou(parts[0])), shims, "± 1.3 thou at worst, ± 1 likely"));
	}

	private static List<RimReading> readings(String felt, int[] hours) {
		String[] words = felt.split(" ");
		List<RimReading> readings = new ArrayList<>();
		for (int i = 0; i < hours.length; i++) {
			ClockHour hour = ClockHour.ofHour(hours[i]);
			readings.add(words[i].equals(".") ? RimReading.drag(hour) : RimReading.free(hour, words[i]));
		}
		return readings;
	}

	static PartialShim shim(String thou, int from, int to) {
		return new PartialShim(Arc.between(ClockHour.ofHour(from), ClockHour.ofHour(to)), Length.thou(thou));
	}

	/** A gap of mean, tilt and saddle in thou, the tilt open at one hour, the saddle at another and its opposite. */
	static GapBand profile(double mean, double tilt, int tiltHour, double saddle, int saddleHour) {
		long[] gaps = new long[ClockHour.STATIONS];
		for (int station = 0; station < gaps.length; station++) {
			double angle = Math.PI * station / 12;
			double thou = mean + tilt * StrictMath.cos(angle - tiltHour * Math.PI / 6)
					+ saddle * StrictMath.cos(2 * (angle - saddleHour * Math.PI / 6));
			gaps[station] = Math.round(25_400 * Math.max(0, thou));
		}
		RimProfile mid = RimProfile.ofNanometres(gaps);
		return new GapBand(times(mid, 0.7), mid, times(mid, 1.3));
	}

	private static RimProfile times(RimProfile profile, double factor) {
		return RimProfile.ofNanometres(profile.stream().map(gap -> Math.round(gap * factor)).toArray());
	}

	private static Optional<CardWork> place(List<PartialShim> pieces) {
		return Optional.of(new CardWork("", List.of(), pieces));
	}

	private static Optional<CardLevel> level(String now, String after) {
		return Optional.of(new CardLevel(now, "0.3 to 0.8 thou at 3", Optional.of(after)));
	}
}
