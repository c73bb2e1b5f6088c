package padwright.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import padwright.engine.length.LengthUnit;
import padwright.exchange.readings.ReadingsTable;
import padwright.exchange.tree.ExchangeException;

/** Whatever comes, it is taken over or refused in words; nothing else gets out. */
class MutilatedContentTest {

	private static final Exchange EXCHANGE = ExampleDocuments.LANGUAGE.getInstance(Exchange.class);
	private static final String SIGNS = "{}[]\",:;.<>&'/=#\n\t 0e-\u0000\uD800é";

	@ParameterizedTest
	@EnumSource
	void ofADocument(Format format) throws ExchangeException {
		SplittableRandom random = new SplittableRandom(format.ordinal());
		String whole = EXCHANGE.write(ExampleDocuments.document("everything.plan"), format);
		int refused = 0;
		for (int run = 0; run < 150; run++) {
			String content = mutilated(whole, random);
			try {
				assertFalse(EXCHANGE.read(content, format).text().isEmpty());
			} catch (ExchangeException inWords) {
				refused++;
				assertTrue(isForPeople(inWords.getMessage()), inWords.getMessage());
			}
		}
		assertTrue(refused > 50, "refused only " + refused);
	}

	@Test
	void ofReadings() {
		SplittableRandom random = new SplittableRandom(9);
		String whole = "indicator;7\nkey;12 (mm);3;6 mm;9 mm\nF;0,381;0,38;0,4;0,3\n\"F♯\";\"0,381\";0,38;.4;0,3 mm\n";
		int taken = 0;
		for (int run = 0; run < 500; run++) {
			try {
				taken += ReadingsTable.read(mutilated(whole, random), Optional.of(LengthUnit.MILLIMETRE)).size();
			} catch (ExchangeException inWords) {
				assertTrue(isForPeople(inWords.getMessage()), inWords.getMessage());
			}
		}
		assertTrue(taken > 50, "taken only " + taken);
	}

	@ParameterizedTest
	@EnumSource
	void whatIsNestedWithoutEndIsRefused(Format format) {
		int depth = 20_000;
		String content = switch (format) {
		case JSON -> "{\"format\":\"padwright/2\",\"stocks\":[{\"name\":\"S\",\"rules\":[{\"text\":\"t\",\"condition\":"
				+ "{\"is\":\"Negation\",\"operand\":".repeat(depth);
		case CSV -> "row,name,condition" + ".operand".repeat(depth) + ".is\nstocks,S,\nstocks.rules,,x\n";
		case XMI -> "<stock:Stock xmlns:stock=\"urn:padwright:stock\">" + "<rules>".repeat(depth);
		};
		assertThrows(ExchangeException.class, () -> EXCHANGE.read(content, format));
	}

	@Test
	void messagesAreForPeople() {
		assertEquals(List.of(true, false, false),
				List.of("write one", "java.lang.X", "a NullPointerException").stream()
						.map(MutilatedContentTest::isForPeople).toList());
	}

	private static boolean isForPeople(String message) {
		return message != null && !message.isBlank() && !message.contains("Exception") && !message.contains("java.");
	}

	private static String mutilated(String whole, SplittableRandom random) {
		StringBuilder content = new StringBuilder(whole);
		for (int wounds = 1 + random.nextInt(3); wounds > 0 && content.length() > 1; wounds--) {
			int at = random.nextInt(content.length());
			switch (random.nextInt(4)) {
			case 0 -> content.setLength(at);
			case 1 -> content.setCharAt(at, SIGNS.charAt(random.nextInt(SIGNS.length())));
			case 2 -> content.insert(at, SIGNS.charAt(random.nextInt(SIGNS.length())));
			default -> content.delete(at, Math.min(content.length(), at + random.nextInt(20)));
			}
		}
		return content.toString();
	}
}
