package padwright.workup.job;

import padwright.model.plan.PadNote;
import padwright.model.plan.PadWork;
import padwright.workup.parts.Withdrawal;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.PlacedPieces;

/** What a plan says is done at one key. */
public final class DoneAtKey {

	private DoneAtKey() {
	}

	/** Whether a new pad is planned for it. */
	public static boolean isPadPlanned(KeyJob job) {
		return job.key().isPresent() && !Withdrawal.keepsPad(job) && job.fitting().pad().isPresent();
	}

	/** Whether the plan says that the new pad is in: by its full shims, by a note, or since it was felt as delivered. */
	public static boolean isPadIn(KeyJob job) {
		return isPadPlanned(job)
				&& (!job.stack().isEmpty() || job.service().getDelivered() != null || isNotedReplaced(job));
	}

	/** Whether it was felt all around as it left. */
	public static boolean isFeltAsDelivered(KeyJob job) {
		return job.service().getDelivered() != null && !job.service().getDelivered().getReadings().isEmpty();
	}

	/** Whether readings stand without what was done about them. */
	public static boolean isUnanswered(KeyJob job) {
		return job.service().getDelivered() == null
				&& job.lastRound().filter(round -> !PlacedPieces.isAnswered(round)).isPresent();
	}

	private static boolean isNotedReplaced(KeyJob job) {
		return JobRecord.of(job.plan().plan()).all(PadNote.class).stream()
				.anyMatch(note -> note.getWork() == PadWork.REPLACED && note.getKeys().contains(job.service().getKey()));
	}
}
