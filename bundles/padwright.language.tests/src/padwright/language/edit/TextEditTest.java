package padwright.language.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

class TextEditTest {

	@Test
	void noEditChangesNothing() {
		assertEquals("abc", TextEdit.apply(List.of(), "abc"));
	}

	@Test
	void editsInAnyOrderGiveTheSame() {
		Random random = new Random(1);
		for (int round = 0; round < 200; round++) {
			StringBuilder text = new StringBuilder();
			StringBuilder expected = new StringBuilder();
			List<TextEdit> edits = new ArrayList<>();
			for (int part = 0; part < 10; part++) {
				String kept = "k".repeat(1 + random.nextInt(4));
				String old = "o".repeat(random.nextInt(4));
				String replacement = "n".repeat(random.nextInt(4));
				edits.add(new TextEdit(text.length() + kept.length(), old.length(), replacement));
				text.append(kept).append(old);
				expected.append(kept).append(replacement);
			}
			Collections.shuffle(edits, random);
			assertEquals(expected.toString(), TextEdit.apply(edits, text.toString()));
		}
	}
}
