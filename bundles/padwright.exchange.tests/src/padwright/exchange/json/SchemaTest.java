package padwright.exchange.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.xtext.IGrammarAccess;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

import dev.harrel.jsonschema.Dialects;
import dev.harrel.jsonschema.SpecificationVersion;
import dev.harrel.jsonschema.Validator;
import dev.harrel.jsonschema.ValidatorFactory;
import dev.harrel.jsonschema.providers.GsonNode;
import padwright.exchange.Exchange;
import padwright.exchange.ExampleDocuments;
import padwright.exchange.Format;
import padwright.exchange.tree.ExchangeException;

/** Holds the published schema to the model, and documents to the schema, by a general-purpose validator. */
class SchemaTest {

	private static final String ID = "urn:padwright:exchange:2";
	private static final String FORM = "{\"format\": \"padwright/2\", ";
	private static final String SYSTEM = FORM + "\"systems\": [{\"name\": \"S\", ";
	private static final Path FRESH = Path.of("target", "fresh");

	private final Validator validator = new ValidatorFactory().withJsonNodeFactory(new GsonNode.Factory())
			.withDefaultDialect(new Dialects.Draft2020Dialect()).createValidator();

	static List<String> documents() {
		return ExampleDocuments.names();
	}

	@Test
	void thePublishedSchemaIsThatOfTheModel() throws IOException {
		String fresh = SchemaOfModel.text(
				new RequiredFeatures(ExampleDocuments.LANGUAGE.getInstance(IGrammarAccess.class).getGrammar()));
		if (!fresh.equals(published())) {
			Files.createDirectories(FRESH);
			Files.writeString(FRESH.resolve(JsonExchange.SCHEMA), fresh);
		}
		assertEquals(fresh, published(), "the model has changed: copy " + FRESH.resolve(JsonExchange.SCHEMA)
				+ " over the published schema, and raise its number if old files are no longer valid");
	}

	@Test
	void theSchemaIsValidItself() throws IOException {
		String metaschema = SpecificationVersion.DRAFT2020_12.getId();
		assertTrue(validator.validate(URI.create(metaschema), published()).isValid());
	}

	@ParameterizedTest
	@MethodSource("documents")
	void whatIsWrittenIsValid(String name) throws IOException, ExchangeException {
		String json = ExampleDocuments.LANGUAGE.getInstance(Exchange.class).write(ExampleDocuments.document(name),
				Format.JSON);
		Validator.Result result = validate(json);
		assertTrue(result.isValid(), () -> result.getErrors().get(0).getInstanceLocation() + " "
				+ result.getErrors().get(0).getError());
	}

	@ParameterizedTest
	@ValueSource(strings = {
			"{}",
			"{\"format\": \"padwright/3\"}",
			FORM + "\"colour\": \"red\"}",
			FORM + "\"systems\": [{\"label\": \"without a name\"}]}",
			SYSTEM + "\"keys\": [{\"name\": \"A\", \"position\": 12}]}]}",
			SYSTEM + "\"keys\": [{\"name\": \"A\", \"position\": \"1e3\"}]}]}",
			SYSTEM + "\"clock\": {\"hour\": \"13\", \"reference\": \"head\"}}]}",
			FORM + "\"stocks\": [{\"name\": \"S\", \"rules\": [{\"text\": \"t\", \"severity\": \"info\", "
					+ "\"condition\": {\"is\": \"Value\"}}]}]}" })
	void whatIsNoDocumentIsNotValid(String json) throws IOException {
		assertFalse(validate(json).isValid());
	}

	private Validator.Result validate(String json) throws IOException {
		validator.registerSchema(URI.create(ID), published());
		return validator.validate(URI.create(ID), json);
	}

	private static String published() throws IOException {
		return new String(JsonExchange.class.getResourceAsStream(JsonExchange.SCHEMA).readAllBytes(),
				StandardCharsets.UTF_8);
	}
}
