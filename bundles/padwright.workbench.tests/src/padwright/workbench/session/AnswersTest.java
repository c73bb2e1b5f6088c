package padwright.workbench.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicInteger;

import org.junit.jupiter.api.Test;

class AnswersTest {

	private final AtomicInteger asked = new AtomicInteger();

	/** Cancelled so many times, then answered with how often it was asked. */
	private CompletableFuture<Integer> cancelledFor(int times) {
		int now = asked.incrementAndGet();
		return now > times ? CompletableFuture.completedFuture(now)
				: CompletableFuture.failedFuture(new CancellationException());
	}

	@Test
	void aQuestionThatAChangeCancelledIsAskedAgain() {
		assertEquals(2, Answers.retried(() -> cancelledFor(1)).join());
	}

	@Test
	void anAnswerIsNotAskedForTwice() {
		assertEquals(1, Answers.retried(() -> cancelledFor(0)).join());
		assertEquals(1, asked.get());
	}

	@Test
	void whatIsCancelledEachTimeFails() {
		assertTrue(Answers.retried(() -> cancelledFor(5)).isCompletedExceptionally());
		assertEquals(5, asked.get());
	}

	@Test
	void whoWaitsIsToldWhatTheNextQuestionBrings() {
		assertEquals(Optional.of(3), Answers.await(() -> cancelledFor(2)));
		assertEquals(Optional.empty(), Answers.await(() -> cancelledFor(99)));
		assertEquals(8, asked.get());
	}
}
