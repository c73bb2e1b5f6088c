package padwright.engine.seating;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.LikelyStiffness;
import padwright.engine.evidence.Posterior;
import padwright.engine.film.FilmSupply;
import padwright.engine.film.PartialShim;
import padwright.engine.levelling.Lift;
import padwright.engine.levelling.Stiffness;

/**
 * All that can be done under a pad, one by one, with what it does to the clearance. Pieces start at a whole hour, are 1
 * to 11 hours long and of any thickness in stock.
 */
final class ActionTable {

	private static final int STATIONS = PossibleRims.STATIONS;
	private static final int LONGEST_HOURS = 11;
	private static final int NO_FILM = -1;

	private final List<Action> actions = new ArrayList<>();
	private final List<Integer> films = new ArrayList<>();
	private final int[] supply;
	private final int inPlace;
	private final Prices prices;
	private final double[][][] lifts;
	private final double[][] waves;

	/** @param unread where no piece may lie and because of which full shims stay as they are */
	ActionTable(SeatProblem problem, LikelyStiffness stiffness, List<Arc> unread) {
		inPlace = problem.now().pieces().size();
		prices = problem.prices();
		supply = collect(problem, unread);
		Shapes shapes = new Shapes(problem.pad().hinge().side(), stiffness);
		lifts = new double[actions.size() + 1][][];
		waves = new double[actions.size()][];
		lifts[nothing()] = new double[LikelyStiffness.NODES][STATIONS];
		for (int id = 0; id < actions.size(); id++) {
			lifts[id] = shapes.lifts(actions.get(id));
			waves[id] = LiftWaves.of(shapes.limpLift(actions.get(id)));
		}
	}

	private int[] collect(SeatProblem problem, List<Arc> unread) {
		List<FilmSupply> stock = problem.films().stream().filter(film -> film.pieces() > 0)
				.sorted(Comparator.comparing(FilmSupply::thickness)).toList();
		for (int hour = 1; hour <= STATIONS / 2; hour++) {
			for (int hours = 1; hours <= LONGEST_HOURS; hours++) {
				Arc arc = new Arc(ClockHour.ofHour(hour), 2 * hours);
				for (int film = 0; film < stock.size() && !UnreadArcs.reach(unread, arc); film++) {
					add(Action.place(new PartialShim(arc, stock.get(film).thickness())), film);
				}
			}
		}
		problem.now().pieces().forEach(piece -> add(Action.takeOut(piece), NO_FILM));
		if (unread.isEmpty()) {
			problem.fullShimSteps().forEach(step -> add(Action.changeFullShims(step), NO_FILM));
		}
		return stock.stream().mapToInt(FilmSupply::pieces).toArray();
	}

	private void add(Action action, int film) {
		actions.add(action);
		films.add(film);
	}

	int count() {
		return actions.size();
	}

	/** Stands for doing nothing where a lift is asked for. */
	int nothing() {
		return actions.size();
	}

	Action action(int id) {
		return actions.get(id);
	}

	/** What an action adds to the lift at the stations, for a stiffness, in nm. */
	double[] lift(int id, int node) {
		return lifts[id][node];
	}

	/** What actions add together, as a copy. */
	double[] lift(int[] ids, int node) {
		double[] sum = new double[STATIONS];
		for (int id : ids) {
			for (int station = 0; station < STATIONS; station++) {
				sum[station] += lift(id, node)[station];
			}
		}
		return sum;
	}

	/** What actions add together, by stiffness and station. */
	double[][] lifts(int[] ids) {
		double[][] lifts = new double[LikelyStiffness.NODES][];
		Arrays.setAll(lifts, node -> lift(ids, node));
		return lifts;
	}

	/** How the lifts of the pieces that are placed change with a slip of the hand. */
	List<double[]> slips(Posterior posterior, int[] ids) {
		return Arrays.stream(ids).mapToObj(actions::get).filter(Action::places)
				.map(action -> posterior.slip(action.piece().get())).toList();
	}

	/** The {@link LiftWaves} of an action as if the pad were limp. */
	double[] waves(int id) {
		return waves[id];
	}

	double price(int id) {
		return actions.get(id).changesFullShims() ? prices.fullShims() : prices.piece();
	}

	double price(int... ids) {
		double sum = 0;
		for (int id : ids) {
			sum += price(id);
		}
		return sum;
	}

	/** Whether all can be done together: with the film there is, nothing twice that can be done once. */
	boolean possible(int... ids) {
		int pieces = inPlace;
		int changes = 0;
		for (int i = 0; i < ids.length; i++) {
			Action action = actions.get(ids[i]);
			pieces += action.places() ? 1 : action.taken() ? -1 : 0;
			changes += action.changesFullShims() ? 1 : 0;
			if (taken(ids, i) > allowed(ids[i])) {
				return false;
			}
		}
		return pieces <= SeatProblem.MOST_PIECES && changes <= 1;
	}

	/** How often what an action takes was taken up to place {@code last}. */
	private int taken(int[] ids, int last) {
		int taken = 0;
		for (int i = 0; i <= last; i++) {
			int film = films.get(ids[i]);
			taken += ids[i] == ids[last] || film != NO_FILM && film == (int) films.get(ids[last]) ? 1 : 0;
		}
		return taken;
	}

	private int allowed(int id) {
		int film = films.get(id);
		return film == NO_FILM ? 1 : supply[film];
	}

	/** Shapes of arcs, worked out once for each length. */
	private static final class Shapes {

		private static final Stiffness LIMP = new Stiffness(0);
		private final int hinge;
		private final LikelyStiffness stiffness;
		private final double[][][] shapes = new double[STATIONS][][];
		private final double[][] limp = new double[STATIONS][];

		Shapes(ClockHour hinge, LikelyStiffness stiffness) {
			this.hinge = hinge.station();
			this.stiffness = stiffness;
		}

		double[][] lifts(Action action) {
			double[][] lifts = new double[LikelyStiffness.NODES][];
			for (int node = 0; node < lifts.length; node++) {
				int at = node;
				lifts[node] = lift(action, action.piece().map(piece -> shape(piece.arc().halfHours(), at)).orElse(null));
			}
			return lifts;
		}

		double[] limpLift(Action action) {
			return lift(action, action.piece().map(piece -> limpShape(piece.arc().halfHours())).orElse(null));
		}

		private double[] lift(Action action, double[] shape) {
			double[] lift = new double[STATIONS];
			for (int station = 0; station < STATIONS; station++) {
				lift[station] = shape == null ? action.fullShims().nanometres() : lift(action, shape, station);
			}
			return lift;
		}

		private double lift(Action action, double[] shape, int station) {
			PartialShim piece = action.piece().get();
			double thickness = action.taken() ? -piece.thickness().nanometres() : piece.thickness().nanometres();
			return thickness * shape[Math.floorMod(station + hinge - piece.arc().from().station(), STATIONS)];
		}

		private double[] shape(int halfHours, int node) {
			if (shapes[halfHours] == null) {
				shapes[halfHours] = new double[LikelyStiffness.NODES][];
				for (int at = 0; at < LikelyStiffness.NODES; at++) {
					shapes[halfHours][at] = Lift.shape(halfHours, stiffness.at(at));
				}
			}
			return shapes[halfHours][node];
		}

		private double[] limpShape(int halfHours) {
			if (limp[halfHours] == null) {
				limp[halfHours] = Lift.shape(halfHours, LIMP);
			}
			return limp[halfHours];
		}
	}
}
