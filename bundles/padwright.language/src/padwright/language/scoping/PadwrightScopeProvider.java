package padwright.language.scoping;

/** What a name in a document may refer to. */
public class PadwrightScopeProvider extends AbstractPadwrightScopeProvider {
}
