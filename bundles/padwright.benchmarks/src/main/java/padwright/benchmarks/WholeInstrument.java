package padwright.benchmarks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import padwright.engine.clock.ClockHour;
import padwright.engine.coupling.Adjuster;
import padwright.engine.coupling.Coupling;
import padwright.engine.coupling.CouplingGraph;
import padwright.engine.diagnosis.Diagnosis;
import padwright.engine.diagnosis.NoteFingering;
import padwright.engine.diagnosis.PadWeights;
import padwright.engine.diagnosis.TrialNotes;
import padwright.engine.drift.Climate;
import padwright.engine.drift.Drift;
import padwright.engine.drift.Layer;
import padwright.engine.drift.MaterialRange;
import padwright.engine.forecast.TearRate;
import padwright.engine.height.HeightSolver;
import padwright.engine.leak.Air;
import padwright.engine.leak.InstrumentLeak;
import padwright.engine.leak.LikelyPad;
import padwright.engine.leak.Tester;
import padwright.engine.length.Length;
import padwright.engine.levelling.Levelling;
import padwright.engine.levelling.LevellingProblem;
import padwright.engine.levelling.LevellingSolution;
import padwright.engine.rim.FeelerSet;
import padwright.engine.rim.RimFit;
import padwright.engine.rim.RimProfile;
import padwright.engine.rim.RimReading;

/** Everything the engine computes for one instrument, from feeler readings on. The figures are invented. */
final class WholeInstrument {

	private static final int QUARTER = ClockHour.STATIONS / 4;
	private static final FeelerSet FEELERS = new FeelerSet(
			List.of("0.5", "1", "1.5", "2", "3").stream().map(Length::thou).toList());
	private static final Layer BASE = new Layer("base", Length.thou("32"), MaterialRange.of("104", "106.5"),
			MaterialRange.of("0.002", "0.004"));

	private final List<LevellingProblem> pads;

	WholeInstrument(List<LevellingProblem> pads) {
		this.pads = pads;
	}

	/** How many pads reach their seat; so that nothing can be left out as unused. */
	long run() {
		List<LevellingSolution> levelled = pads.stream().map(WholeInstrument::level).toList();
		pads.forEach(pad -> HeightSolver.solve(Length.thou("15.14"), pad.films()));
		leak(pads.stream().map(LevellingProblem::gap).toList());
		leak(levelled.stream().map(LevellingSolution::residual).toList());
		pads.forEach(pad -> Drift.of(List.of(BASE), Climate.of("20", "45"), Climate.of("28", "70")));
		couple(levelled);
		diagnose();
		TearRate.MOST_PLAYERS.forecast(1, 0.9);
		return levelled.stream().filter(solution -> solution.excess().signum() == 0).count();
	}

	private static LevellingSolution level(LevellingProblem pad) {
		List<RimReading> readings = new ArrayList<>();
		for (int station = 0; station < ClockHour.STATIONS; station += QUARTER) {
			ClockHour hour = new ClockHour(station);
			Length gap = pad.gap().at(hour);
			readings.add(FEELERS.leaves().stream().filter(leaf -> !leaf.isLongerThan(gap))
					.reduce((thinner, thicker) -> thicker).map(leaf -> FEELERS.free(hour, leaf))
					.orElseGet(() -> FEELERS.drags(hour)));
		}
		return Levelling.solve(new LevellingProblem(RimFit.fit(readings).profile(), pad.stiffness(), pad.films(),
				pad.tolerance(), pad.maxPieces()));
	}

	private static void leak(List<RimProfile> gaps) {
		List<LikelyPad> seated = IntStream.range(0, gaps.size()).mapToObj(pad -> new LikelyPad(name(pad),
				Length.millimetres("7.2"), Length.millimetres("1"), List.of(resting(gaps.get(pad))))).toList();
		InstrumentLeak.of(seated, new Tester(1000, Air.at(20))).ranked();
	}

	private static RimProfile resting(RimProfile gap) {
		long highest = gap.stream().min().orElseThrow();
		return RimProfile.ofNanometres(gap.stream().map(station -> station - highest).toArray());
	}

	private void couple(List<LevellingSolution> levelled) {
		List<String> keys = IntStream.range(0, pads.size()).mapToObj(WholeInstrument::name).toList();
		List<Coupling> couplings = IntStream.range(1, pads.size()).filter(key -> key % 3 != 0)
				.mapToObj(key -> new Coupling(name(key), name(key - key % 3), Adjuster.film(pads.get(key).films())))
				.toList();
		Map<String, Length> lifts = new HashMap<>();
		IntStream.range(0, pads.size()).forEach(pad -> lifts.put(name(pad), levelled.get(pad).meanLift()));
		CouplingGraph graph = new CouplingGraph(keys, couplings);
		graph.couplingsInOrderOfWork();
		graph.upsets(lifts);
	}

	private void diagnose() {
		List<NoteFingering> notes = IntStream.range(0, 2 * pads.size()).mapToObj(this::note).toList();
		Diagnosis.of(new TrialNotes(notes.subList(0, 3), notes.subList(pads.size(), pads.size() + 2)), PadWeights.EVEN)
				.nextNote(notes);
	}

	private NoteFingering note(int number) {
		Set<String> closed = IntStream.range(0, pads.size()).filter(pad -> (pad * 7 + number * 3) % 5 < 2)
				.mapToObj(WholeInstrument::name).collect(Collectors.toSet());
		return new NoteFingering("N" + number, closed);
	}

	private static String name(int pad) {
		return "K" + pad;
	}
}
