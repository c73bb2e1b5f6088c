package padwright.benchmarks;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;

import padwright.engine.acoustics.Cover;
import padwright.engine.acoustics.Hole;
import padwright.engine.acoustics.Instrument;
import padwright.engine.acoustics.LeakHarm;
import padwright.engine.acoustics.TargetNote;
import padwright.engine.diagnosis.Diagnosis;
import padwright.engine.diagnosis.Ear;
import padwright.engine.diagnosis.HeardLeaks;
import padwright.engine.diagnosis.HeardSuspects;
import padwright.engine.diagnosis.NextNote;
import padwright.engine.diagnosis.NoteFingering;
import padwright.engine.diagnosis.PadWeights;
import padwright.engine.diagnosis.SearchLimits;
import padwright.engine.diagnosis.SuspectSet;
import padwright.engine.diagnosis.TrialNotes;

/**
 * How often the pad that leaks stands first among the suspects, after all notes were played by an ear that now and then errs,
 * and after the notes that are asked for then. One pad leaks: by 1 to 4 thou at its widest, over two hours of the rim to all
 * of it. Leaks that no note tells of with any confidence are left aside: there is nothing to diagnose.
 */
final class LeakHearing {

	private static final int STATIONS = 24;
	private static final double THOU = 25.4e-6;
	private static final double LEAST_HEARD = 0.7;
	/** What a leak of 1 thou all around is. */
	private static final double LARGE = 1;
	private static final int ASKED = 8;
	private static final Ear EAR = Ear.USUAL;

	private final List<NoteFingering> notes = new ArrayList<>();
	private final Map<String, Map<String, Double>> weakening = new HashMap<>();
	private final List<String> pads;
	private final BestJudge judge;
	private final Share all = new Share();
	private final Share large = new Share();

	/** How many leaks there were, and how many of them were found. */
	private static final class Share {

		private int cases;
		private int logic;
		private int heard;
		private int second;
		private int asked;
		private int notesAsked;
		private int best;
		private int alike;

		private double of(int found) {
			return 100.0 * found / cases;
		}
	}

	LeakHearing(Instrument flute, List<TargetNote> scale) {
		pads = flute.layout().holes().stream().map(Hole::name).toList();
		Cover.Leaking thou = new Cover.Leaking(Collections.nCopies(STATIONS, THOU));
		scale.forEach(note -> {
			notes.add(new NoteFingering(note.label(), note.fingering().covers().keySet()));
			weakening.put(note.label(), new HashMap<>());
		});
		LeakHarm.of(flute, scale, pads.stream().collect(Collectors.toMap(pad -> pad, pad -> List.of(thou))))
				.forEach(harm -> weakening.get(harm.note().label()).put(harm.hole(), Math.max(0, 1 / harm.left() - 1)));
		judge = new BestJudge(pads, weakening, EAR, LeakHearing::size);
	}

	void run(int leaks, long seed) {
		Random random = new Random(seed);
		for (int leak = 0; leak < leaks; leak++) {
			String pad = pads.get(random.nextInt(pads.size()));
			play(pad, size(random), random);
		}
	}

	private static double size(Random random) {
		return size(1 + 3 * random.nextDouble(), 2 + 10 * random.nextDouble());
	}

	/** Mean of the cubes of a gap in thou that is {@code worst} in the middle of so many hours and shut beyond them. */
	private static double size(double worst, double hours) {
		double sum = 0;
		for (int station = 0; station < STATIONS; station++) {
			double away = Math.abs(station / 2.0 - 6) / (hours / 2);
			sum += away < 1 ? Math.pow(worst * Math.cos(Math.PI / 2 * away), 3) : 0;
		}
		return sum / STATIONS;
	}

	private void play(String pad, double size, Random random) {
		List<NoteFingering> bad = new ArrayList<>();
		List<NoteFingering> good = new ArrayList<>();
		notes.forEach(note -> (isBad(note, pad, size, random) ? bad : good).add(note));
		double most = notes.stream().mapToDouble(note -> weaker(note, pad, size)).max().orElseThrow();
		if (most >= LEAST_HEARD && !bad.isEmpty()) {
			judge(pad, size, new TrialNotes(bad, good), random);
		}
	}

	private double weaker(NoteFingering note, String pad, double size) {
		return 20 * Math.log10(1 + size * weakening.get(note.note()).getOrDefault(pad, 0.0));
	}

	private boolean isBad(NoteFingering note, String pad, double size, Random random) {
		return random.nextDouble() < EAR.chanceBad(weaker(note, pad, size));
	}

	private void judge(String pad, double size, TrialNotes tried, Random random) {
		HeardSuspects heard = heard(tried);
		List<SuspectSet> suspects = heard.diagnosis().suspects();
		boolean logic = isAt(0, pad, Diagnosis.of(tried, PadWeights.EVEN).suspects());
		String best = judge.likeliest(tried);
		TrialNotes more = tried;
		Optional<NextNote> next = heard.nextNote(notes);
		int asked = 0;
		for (; asked < ASKED && next.isPresent(); asked++) {
			more = with(more, next.get().note(), isBad(next.get().note(), pad, size, random));
			heard = heard(more);
			next = heard.nextNote(notes);
		}
		for (Share share : size < LARGE ? List.of(all) : List.of(all, large)) {
			share.cases++;
			share.logic += logic ? 1 : 0;
			share.heard += isAt(0, pad, suspects) ? 1 : 0;
			share.second += isAt(0, pad, suspects) || isAt(1, pad, suspects) ? 1 : 0;
			share.best += best.equals(pad) ? 1 : 0;
			share.alike += judge.areAlike(best, pad) ? 1 : 0;
			share.asked += isAt(0, pad, heard.diagnosis().suspects()) ? 1 : 0;
			share.notesAsked += asked;
		}
	}

	private HeardSuspects heard(TrialNotes tried) {
		return HeardSuspects.of(tried, PadWeights.EVEN, new HeardLeaks(weakening, Map.of(), EAR), new SearchLimits(3, 50));
	}

	private static TrialNotes with(TrialNotes tried, NoteFingering note, boolean isBad) {
		List<NoteFingering> bad = new ArrayList<>(tried.bad());
		List<NoteFingering> good = new ArrayList<>(tried.good());
		(isBad ? bad : good).add(note);
		return new TrialNotes(bad, good);
	}

	private static boolean isAt(int place, String pad, List<SuspectSet> suspects) {
		return suspects.size() > place && suspects.get(place).pads().equals(Set.of(pad));
	}

	@Override
	public String toString() {
		return line("leaks that are heard in some note", all)
				+ line("those as large as 1 thou all around or larger", large);
	}

	private static String line(String which, Share share) {
		return String.format("Of %d %s the right pad is first in %.0f %%, first or second in %.0f %%; by logic alone, without "
				+ "the air column, first in %.0f %%.%n  The best judge of the same notes has it first in %.0f %%, in %.0f %% where "
				+ "pads that do the same harm count as one.%n  After the notes that are asked for then, %.1f on average, it is first "
				+ "in %.0f %%.%n", share.cases, which, share.of(share.heard), share.of(share.second), share.of(share.logic),
				share.of(share.best), share.of(share.alike), share.notesAsked / (double) share.cases, share.of(share.asked));
	}
}
