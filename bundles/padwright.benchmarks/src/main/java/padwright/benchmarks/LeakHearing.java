package padwright.benchmarks;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
import padwright.engine.diagnosis.NoteFingering;
import padwright.engine.diagnosis.PadWeights;
import padwright.engine.diagnosis.SearchLimits;
import padwright.engine.diagnosis.SuspectSet;
import padwright.engine.diagnosis.TrialNotes;

/**
 * How often the pad that leaks stands first among the suspects, after all notes were played by an ear that now and then errs.
 * One pad leaks: by 1 to 4 thou at its widest, over two hours of the rim to all of it. Leaks that no note tells of with any
 * confidence are left aside: there is nothing to diagnose.
 */
final class LeakHearing {

	private static final int STATIONS = 24;
	private static final double THOU = 25.4e-6;
	private static final double LEAST_HEARD = 0.7;
	private static final Ear EAR = Ear.USUAL;

	private final List<NoteFingering> notes = new ArrayList<>();
	private final Map<String, Map<String, Double>> weakening = new HashMap<>();
	private final List<String> pads;
	private int cases;
	private int heardFirst;
	private int heardSecond;
	private int logicFirst;

	LeakHearing(Instrument flute, List<TargetNote> scale) {
		pads = flute.layout().holes().stream().map(Hole::name).toList();
		Cover.Leaking thou = new Cover.Leaking(Collections.nCopies(STATIONS, THOU));
		scale.forEach(note -> {
			notes.add(new NoteFingering(note.label(), note.fingering().covers().keySet()));
			weakening.put(note.label(), new HashMap<>());
		});
		LeakHarm.of(flute, scale, pads.stream().collect(Collectors.toMap(pad -> pad, pad -> List.of(thou))))
				.forEach(harm -> weakening.get(harm.note().label()).put(harm.hole(), Math.max(0, 1 / harm.left() - 1)));
	}

	void run(int leaks, long seed) {
		Random random = new Random(seed);
		for (int leak = 0; leak < leaks; leak++) {
			String pad = pads.get(random.nextInt(pads.size()));
			play(pad, size(1 + 3 * random.nextDouble(), 2 + 10 * random.nextDouble()), random);
		}
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
		double most = 0;
		for (NoteFingering note : notes) {
			double weaker = 20 * Math.log10(1 + size * weakening.get(note.note()).getOrDefault(pad, 0.0));
			most = Math.max(most, weaker);
			(random.nextDouble() < EAR.chanceBad(weaker) ? bad : good).add(note);
		}
		if (most >= LEAST_HEARD && !bad.isEmpty()) {
			judge(pad, new TrialNotes(bad, good));
		}
	}

	private void judge(String pad, TrialNotes tried) {
		cases++;
		List<SuspectSet> heard = HeardSuspects.of(tried, PadWeights.EVEN, new HeardLeaks(weakening, Map.of(), EAR),
				new SearchLimits(3, 50)).diagnosis().suspects();
		heardFirst += isAt(0, pad, heard) ? 1 : 0;
		heardSecond += isAt(0, pad, heard) || isAt(1, pad, heard) ? 1 : 0;
		logicFirst += isAt(0, pad, Diagnosis.of(tried, PadWeights.EVEN).suspects()) ? 1 : 0;
	}

	private static boolean isAt(int place, String pad, List<SuspectSet> suspects) {
		return suspects.size() > place && suspects.get(place).pads().equals(Set.of(pad));
	}

	@Override
	public String toString() {
		return String.format("Of %d leaks that are heard in some note the right pad is first in %.0f %%, first or second in "
				+ "%.0f %%; by logic alone, without the air column, first in %.0f %%", cases, 100.0 * heardFirst / cases,
				100.0 * heardSecond / cases, 100.0 * logicFirst / cases);
	}
}
