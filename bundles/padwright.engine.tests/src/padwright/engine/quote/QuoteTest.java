package padwright.engine.quote;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

class QuoteTest {

	private static BigDecimal money(String text) {
		return new BigDecimal(text);
	}

	/** Three of 0.10 are 0.30, which binary floating point misses. */
	@Test
	void decimalsAreExact() {
		Quote quote = new Quote(List.of(new QuoteLine("film", 3, money("0.10"))), List.of(), Labour.NONE, money("0"));
		assertEquals(money("0.30"), quote.total());
	}

	@Test
	void addsPartsTimeAndTax() {
		List<QuoteLine> lines = List.of(new QuoteLine("pad", 17, money("14.00")), new QuoteLine("film", 41, money("0.25")));
		Quote quote = new Quote(lines, List.of("glue"), new Labour(money("390"), money("72")), money("19"));
		assertEquals(money("248.25"), quote.parts());
		assertEquals(money("468.00"), quote.labour().amount());
		assertEquals(money("716.25"), quote.net());
		// 716.25 × 0.19 = 136.0875
		assertEquals(money("136.09"), quote.tax());
		assertEquals(money("852.34"), quote.total());
	}

	@Test
	void halvesAreRoundedUpOnce() {
		assertEquals(money("0.02"), new QuoteLine("film", 3, money("0.005")).amount());
		assertEquals(money("0.01"), new Labour(money("1"), money("0.3")).amount());
		assertEquals(money("33.33"), new Labour(money("20"), money("100")).amount());
	}

	/** Against whole-number arithmetic in ten-thousandths. */
	@Test
	void whatIsShownAddsUp() {
		SplittableRandom random = new SplittableRandom(31);
		for (int round = 0; round < 500; round++) {
			List<QuoteLine> lines = new ArrayList<>();
			BigInteger hundredths = BigInteger.ZERO;
			for (int line = random.nextInt(12); line > 0; line--) {
				long price = random.nextLong(2_000_000);
				int count = random.nextInt(1, 40);
				lines.add(new QuoteLine("article", count, BigDecimal.valueOf(price, 4)));
				hundredths = hundredths.add(BigInteger.valueOf((price * count + 50) / 100));
			}
			Quote quote = new Quote(lines, List.of(), Labour.NONE, BigDecimal.valueOf(random.nextInt(3000), 2));
			assertEquals(new BigDecimal(hundredths, 2), quote.parts());
			assertEquals(quote.total(), quote.parts().add(quote.labour().amount()).add(quote.tax()));
			BigDecimal exactTax = quote.net().multiply(quote.taxPercent()).divide(BigDecimal.valueOf(100));
			assertTrue(quote.tax().subtract(exactTax).abs().compareTo(money("0.005")) <= 0);
		}
	}

	@Test
	void whatIsBelowNothingIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> new QuoteLine("pad", 0, money("1")));
		assertThrows(IllegalArgumentException.class, () -> new QuoteLine("pad", 1, money("-1")));
		assertThrows(IllegalArgumentException.class, () -> new Labour(money("-1"), money("1")));
		assertThrows(IllegalArgumentException.class, () -> new Quote(List.of(), List.of(), Labour.NONE, money("-7")));
	}
}
