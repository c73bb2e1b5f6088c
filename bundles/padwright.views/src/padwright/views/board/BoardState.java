package padwright.views.board;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import padwright.workup.next.NextStep;
import padwright.workup.next.NextStep.Kind;
import padwright.workup.next.NextSteps;

/**
 * What stands on the board of a shop on one day.
 *
 * @param today the day it is told for
 * @param lanes all lanes with a card, in the order of a job
 * @param hands who writes in the plans, in order
 * @param silent how many plans say nothing of a job
 */
public record BoardState(LocalDate today, List<BoardLane> lanes, List<String> hands, int silent) {

	public BoardState {
		lanes = List.copyOf(lanes);
		hands = List.copyOf(hands);
	}

	public static BoardState empty(LocalDate today) {
		return new BoardState(today, List.of(), List.of(), 0);
	}

	/**
	 * The board.
	 *
	 * @param hand whose instruments alone are shown; nothing for all
	 */
	public static BoardState of(NextSteps next, Optional<String> hand) {
		List<String> hands = next.steps().stream().flatMap(step -> step.hand().stream()).distinct().sorted().toList();
		List<NextStep> shown = next.steps().stream().filter(step -> hand.isEmpty() || step.hand().equals(hand)).toList();
		List<BoardLane> lanes = Arrays.stream(Kind.values()).map(kind -> lane(kind, shown, next.today()))
				.filter(lane -> !lane.cards().isEmpty()).toList();
		return new BoardState(next.today(), lanes, hands, next.silent());
	}

	/** What is held stands where it is held, below what it waits for. */
	private static BoardLane lane(Kind kind, List<NextStep> steps, LocalDate today) {
		Map<String, List<NextStep>> byPlan = new LinkedHashMap<>();
		steps.stream().filter(step -> step.heldBy().orElse(step.kind()) == kind)
				.forEach(step -> byPlan.computeIfAbsent(step.plan(), unseen -> new ArrayList<>()).add(step));
		return new BoardLane(kind, byPlan.entrySet().stream().map(card -> new BoardCard(kind + " " + card.getKey(),
				card.getValue(), card.getValue().stream().anyMatch(step -> step.isLate(today)))).toList());
	}

	/** The card of an id. */
	public Optional<BoardCard> card(String id) {
		return lanes.stream().flatMap(lane -> lane.cards().stream()).filter(card -> card.id().equals(id)).findFirst();
	}

	public int count() {
		return lanes.stream().mapToInt(lane -> lane.cards().size()).sum();
	}
}
