package padwright.language.ide.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.SemanticTokensLegend;
import org.eclipse.lsp4j.SemanticTokensParams;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TokensTest {

	private static final String STOCK = "// An end.\nstock Bench {\n\tmaterial felt { lasts 10 years }\n"
			+ "\tpad Soft { kind felt face felt 1 mm }\n"
			+ "\trule \"no\" warn when pad.kind is felt\n}\n";

	@TempDir
	private Path folder;

	@Test
	void tellWhatEveryWordIs() throws Exception {
		Path file = TestShop.empty(folder.resolve("shop")).write("bench.stock", STOCK);
		try (Connection editor = Connection.open(file.getParent())) {
			List<Integer> data = editor.get(editor.server().getTextDocumentService()
					.semanticTokensFull(new SemanticTokensParams(Connection.document(file)))).getData();
			List<String> tokens = tokens(data,
					editor.initialized().getCapabilities().getSemanticTokensProvider().getLegend());
			assertEquals("// An end. comment", tokens.get(0));
			assertTrue(tokens.containsAll(List.of("stock keyword", "Bench namespace declaration",
					"felt parameter declaration", "10 number", "years modifier", "Soft type declaration",
					"felt type", "felt parameter", "1 number", "mm modifier", "\"no\" string", ". operator",
					"warn enumMember", "kind property", "felt property", "{ operator")), tokens.toString());
		}
	}

	private static List<String> tokens(List<Integer> data, SemanticTokensLegend legend) {
		List<String> tokens = new ArrayList<>();
		int line = 0;
		int column = 0;
		for (int index = 0; index < data.size(); index += 5) {
			column = data.get(index) == 0 ? column + data.get(index + 1) : data.get(index + 1);
			line += data.get(index);
			Range range = new Range(new Position(line, column), new Position(line, column + data.get(index + 2)));
			String modifier = data.get(index + 4) == 0 ? ""
					: " " + legend.getTokenModifiers().get(Integer.numberOfTrailingZeros(data.get(index + 4)));
			tokens.add(Texts.in(range, STOCK) + " " + legend.getTokenTypes().get(data.get(index + 3)) + modifier);
		}
		return tokens;
	}
}
