package padwright.commands;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

import padwright.language.archive.ResultStore;
import padwright.language.archive.ShopCheck;
import padwright.language.shop.ShopFinding;

/** Checks shops with all processors. Ended from the keyboard, it still keeps what it has found for the next time. */
final class CheckRun implements AutoCloseable {

	private static final long LONGEST_GOODBYE_SECONDS = 10;

	private final Progress progress;
	private final CountDownLatch done = new CountDownLatch(1);
	private final Thread goodbye = new Thread(this::sayGoodbye, "padwright-goodbye");
	private volatile boolean cancelled;

	CheckRun(Progress progress) {
		this.progress = progress;
		Runtime.getRuntime().addShutdownHook(goodbye);
	}

	/** Lets the check end with the files that are at hand. */
	void stop() {
		cancelled = true;
	}

	private void sayGoodbye() {
		stop();
		try {
			done.await(LONGEST_GOODBYE_SECONDS, TimeUnit.SECONDS);
		} catch (InterruptedException inAHurry) {
			Thread.currentThread().interrupt();
		}
	}

	/** @param afresh whether former results are passed over */
	List<ShopFinding> findings(ChosenFiles shop, Map<Path, String> texts, boolean afresh) {
		ResultStore store = afresh ? ResultStore.none() : kept(shop.top());
		ShopCheck check = new ShopCheck(shop.top(), shop.all(), texts, Language::another,
				Runtime.getRuntime().availableProcessors());
		List<ShopFinding> findings =
				check.run(shop.chosen(), store, file -> progress.next(() -> ShownPath.of(file)), () -> cancelled);
		try {
			store.save();
		} catch (IOException noRoom) {
			// The next check takes longer, that is all.
		}
		return findings;
	}

	/** Former results; none outside a product, whose version would be unknown. */
	private static ResultStore kept(Path shop) {
		return UserCache.version().map(version -> ResultStore.open(UserCache.file("check", shop), version))
				.orElseGet(ResultStore::none);
	}

	/** Whether it was ended before all was judged, so that the findings are not all there are. */
	boolean isStopped() {
		return cancelled;
	}

	@Override
	public void close() {
		if (cancelled) {
			progress.stop();
		} else {
			progress.end();
			Runtime.getRuntime().removeShutdownHook(goodbye);
		}
		done.countDown();
	}
}
