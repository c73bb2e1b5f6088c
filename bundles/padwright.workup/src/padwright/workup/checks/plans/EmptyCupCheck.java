package padwright.workup.checks.plans;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.rim.ReferencePlane;
import padwright.engine.rim.ReferencePlane.Point;
import padwright.model.plan.PlanPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.inspection.EmptyCup;
import padwright.workup.service.KeyJob;

/**
 * The gap around the empty cup is about even, front to back and side to side (common practice, no source). An uneven
 * one is a bent cup or arm, or a rim that is not flat, and is put right before padding.
 */
public final class EmptyCupCheck extends Check<KeyJob> {

	public EmptyCupCheck() {
		super(KeyJob.class);
	}

	@Override
	protected void check(KeyJob job, Findings findings) {
		List<Length> gaps = job.emptyGaps();
		List<ClockHour> hours = job.plan().plan().getHours();
		if (gaps.size() != hours.size() || hours.stream().distinct().count() < 3) {
			return;
		}
		Length spread = Collections.max(gaps).minus(Collections.min(gaps));
		if (spread.isLongerThan(EmptyCup.MOST_UNEVEN)) {
			findings.warning(IssueCodes.EMPTY_CUP_UNEVEN,
					Place.of(job.service(), PlanPackage.Literals.KEY_SERVICE__EMPTY),
					leaning(hours, gaps)
							.map(hour -> Advice.of("empty-cup-uneven.leans", job.name(), spread, hour))
							.orElseGet(() -> Advice.of("empty-cup-uneven", job.name(), spread)));
		}
	}

	/** Where the cup leans, if a plane tells the greater part of it. */
	private static Optional<ClockHour> leaning(List<ClockHour> hours, List<Length> gaps) {
		List<Point> points = new ArrayList<>();
		for (int index = 0; index < gaps.size(); index++) {
			points.add(Point.of(hours.get(index), gaps.get(index)));
		}
		ReferencePlane plane = ReferencePlane.of(points);
		boolean leans = plane.fromTightToOpen() > EmptyCup.MOST_UNEVEN.nanometres();
		return leans ? Optional.of(plane.openHour()) : Optional.empty();
	}
}
