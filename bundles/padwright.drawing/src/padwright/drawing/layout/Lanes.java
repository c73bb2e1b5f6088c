package padwright.drawing.layout;

import java.util.ArrayList;
import java.util.List;

/** Side-by-side lanes for stretches of a line, so that no two that overlap or touch share one. */
public final class Lanes {

	/** From one place to another on the line, mm. */
	public record Stretch(double from, double to) {

		public static Stretch between(double one, double other) {
			return new Stretch(Math.min(one, other), Math.max(one, other));
		}

		boolean meets(Stretch other) {
			return from <= other.to && other.from <= to;
		}
	}

	private Lanes() {
	}

	/** The lane of each stretch, from 0: the lowest that is free, in the order given. */
	public static List<Integer> of(List<Stretch> stretches) {
		List<Integer> lanes = new ArrayList<>();
		for (int index = 0; index < stretches.size(); index++) {
			int lane = 0;
			while (isTaken(lane, stretches, lanes, index)) {
				lane++;
			}
			lanes.add(lane);
		}
		return lanes;
	}

	private static boolean isTaken(int lane, List<Stretch> stretches, List<Integer> lanes, int index) {
		for (int other = 0; other < index; other++) {
			if (lanes.get(other) == lane && stretches.get(other).meets(stretches.get(index))) {
				return true;
			}
		}
		return false;
	}

	/** Places as near to those wished as they can be {@code apart}, in the same order; pushed on only. */
	public static List<Double> spread(List<Double> wishedInOrder, double apart) {
		List<Double> placed = new ArrayList<>();
		for (double wish : wishedInOrder) {
			placed.add(placed.isEmpty() ? wish : Math.max(wish, placed.get(placed.size() - 1) + apart));
		}
		return placed;
	}
}
