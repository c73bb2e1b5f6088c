package padwright.workup.remember;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * Answers to questions that were asked before: after an edit of one row, all other rows of an instrument ask the same again.
 * For any number of threads.
 */
public final class Remembered<Q, A> {

	private final int most;
	private final Function<Q, A> answers;
	private final Map<Q, A> known = new LinkedHashMap<>(16, 0.75f, true);

	/** @param most how many answers are kept, those asked for last */
	public Remembered(int most, Function<Q, A> answers) {
		this.most = most;
		this.answers = answers;
	}

	/** Two threads that ask the same at once may both work it out. */
	public A of(Q question) {
		synchronized (known) {
			if (known.containsKey(question)) {
				return known.get(question);
			}
		}
		A answer = answers.apply(question);
		synchronized (known) {
			known.put(question, answer);
			if (known.size() > most) {
				known.remove(known.keySet().iterator().next());
			}
		}
		return answer;
	}
}
