package padwright.language.archive;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.xtext.service.OperationCanceledError;
import org.eclipse.xtext.util.CancelIndicator;

import com.google.inject.Injector;

/** The workers of a check; they are there only when there is work. */
final class CheckWorkers {

	/** So many files are worth a thread and its own copy of all sources. */
	private static final int WORTH_A_THREAD = 40;

	private final Supplier<Injector> languages;
	private final int threads;
	private final Collection<FileState> sources;
	private final Map<Path, String> otherTexts;
	private Worker first;

	CheckWorkers(Supplier<Injector> languages, int threads, Collection<FileState> sources, Map<Path, String> otherTexts) {
		this.languages = languages;
		this.threads = threads;
		this.sources = sources;
		this.otherTexts = otherTexts;
	}

	/** Whether these are the files that the workers have loaded, with the content they have now. */
	boolean hasLoaded(Collection<FileState> now) {
		return contents(now).equals(contents(sources));
	}

	private static List<String> contents(Collection<FileState> files) {
		return files.stream().map(file -> file.path() + file.hash()).toList();
	}

	private Worker first() {
		if (first == null) {
			first = worker();
		}
		return first;
	}

	private Worker worker() {
		Worker worker = new Worker(languages.get());
		worker.addSources(sources, this::text);
		return worker;
	}

	private FileText text(FileState state) {
		return state.text(otherTexts);
	}

	/** What a file gives to others. */
	FileResult describe(FileState state) {
		return first().describe(state.file(), text(state));
	}

	/** The files that are due with their results; all of them unless cancelled. */
	Collection<FileState> check(List<FileState> due, SourceGraph graph, Consumer<Path> progress,
			CancelIndicator cancelled) {
		Queue<FileState> judged = new ConcurrentLinkedQueue<>();
		AtomicInteger next = new AtomicInteger();
		AtomicReference<Throwable> failure = new AtomicReference<>();
		inParallel(Math.min(threads, 1 + due.size() / WORTH_A_THREAD), due.isEmpty() ? null : first(), worker -> {
			for (int at = next.getAndIncrement(); at < due.size() && !cancelled.isCanceled()
					&& failure.get() == null; at = next.getAndIncrement()) {
				FileState state = due.get(at);
				progress.accept(state.file());
				FileText text = text(state);
				try {
					FileResult result = worker.check(state.file(), text, cancelled);
					if (!cancelled.isCanceled()) {
						judged.add(state.judged(text, result, graph));
					}
				} catch (OperationCanceledError halfway) {
					return;
				}
			}
		}, failure);
		return judged;
	}

	private void inParallel(int workers, Worker own, Consumer<Worker> work, AtomicReference<Throwable> failure) {
		List<Thread> others = new ArrayList<>();
		for (int other = 1; other < workers; other++) {
			others.add(new Thread(() -> work.accept(worker()), "padwright-check-" + other));
		}
		others.forEach(thread -> {
			thread.setDaemon(true);
			thread.setUncaughtExceptionHandler((failed, reason) -> failure.compareAndSet(null, reason));
			thread.start();
		});
		if (own != null) {
			work.accept(own);
		}
		others.forEach(CheckWorkers::await);
		if (failure.get() != null) {
			throw new IllegalStateException("a check failed: " + failure.get(), failure.get());
		}
	}

	static void await(Thread thread) {
		try {
			thread.join();
		} catch (InterruptedException stopped) {
			Thread.currentThread().interrupt();
		}
	}
}
