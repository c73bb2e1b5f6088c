package padwright.engine.height;

import java.math.BigInteger;

/** Which sums the stock can make at all. */
final class ReachableSums {

	private ReachableSums() {
	}

	/** Bit s is set if pieces from stock add up to s steps, for s up to the highest sum worth a look. */
	static BigInteger of(SteppedStock stock) {
		BigInteger within = BigInteger.ONE.shiftLeft(stock.highestSum() + 1).subtract(BigInteger.ONE);
		BigInteger reachable = BigInteger.ONE;
		for (int film = 0; film < stock.films(); film++) {
			int left = stock.pieces()[film];
			for (int bundle = 1; left > 0; bundle *= 2) {
				int taken = Math.min(bundle, left);
				reachable = reachable.or(reachable.shiftLeft(taken * stock.steps()[film])).and(within);
				left -= taken;
			}
		}
		return reachable;
	}
}
