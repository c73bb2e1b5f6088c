package padwright.language.ide;

/** The services that editors of every kind share. */
public class PadwrightIdeModule extends AbstractPadwrightIdeModule {
}
