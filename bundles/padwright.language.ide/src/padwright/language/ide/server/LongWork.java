package padwright.language.ide.server;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;

import org.eclipse.lsp4j.services.LanguageClient;

import com.google.inject.Singleton;

/** Work that takes so long that a client wants to be told how far it has come, and to stop it. */
@Singleton
final class LongWork {

	private static final String TOKEN = "padwright-";

	private final AtomicInteger count = new AtomicInteger();
	private final Map<String, WorkProgress> underWay = new ConcurrentHashMap<>();
	private volatile LanguageClient client;

	/** From now on {@code client} is told. */
	void tell(LanguageClient client) {
		this.client = client;
	}

	/**
	 * Begins a piece of work; nothing where no client is told of it.
	 *
	 * @param title what it is called
	 * @param steps above 0
	 */
	Optional<WorkProgress> begin(String title, int steps) {
		LanguageClient told = client;
		if (told == null) {
			return Optional.empty();
		}
		String token = TOKEN + count.incrementAndGet();
		WorkProgress progress = new WorkProgress(told, token, steps, () -> underWay.remove(token));
		underWay.put(token, progress);
		progress.begin(title);
		return Optional.of(progress);
	}

	/** The client does not want to wait for a piece of work any longer. */
	void stop(String token) {
		Optional.ofNullable(underWay.get(token)).ifPresent(WorkProgress::stop);
	}
}
