import static java.util.stream.Collectors.groupingBy;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import javax.inject.Inject;
import javax.inject.Named;
import javax.inject.Singleton;
import org.eclipse.aether.DefaultRepositorySystemSession;
import org.eclipse.aether.RepositorySystemSession;
import org.eclipse.aether.artifact.ArtifactProperties;
import org.eclipse.aether.impl.ArtifactResolver;
import org.eclipse.aether.internal.impl.DefaultArtifactResolver;
import org.eclipse.aether.resolution.ArtifactRequest;
import org.eclipse.aether.resolution.ArtifactResolutionException;
import org.eclipse.aether.resolution.ArtifactResult;
import org.eclipse.sisu.Priority;

/**
 * Lets Maven compare every artifact it fetches with its recorded checksum, though Tycho tells it of artifacts by the path
 * of a file alone: for one from no repository Maven's comparison ends in an error. Those are the bundles of the target
 * platform, which were compared when they were fetched, and what our own bundles are made of.
 * <p>
 * What Tycho tells Maven of the rest of a project's dependencies changes with what the local repository holds, and no
 * plug-in of ours uses it: compared if recorded, but not missed if not.
 */
@Named
@Priority(1)
@Singleton
public final class FetchedAndLocalArtifacts implements ArtifactResolver {
	private static final String COMPARISON = "aether.artifactResolver.postProcessor.trustedChecksums";
	private static final String FAIL_IF_MISSING = COMPARISON + ".failIfMissing";

	private final ArtifactResolver maven;

	@Inject
	FetchedAndLocalArtifacts(DefaultArtifactResolver maven) {
		this.maven = maven;
	}

	@Override
	public ArtifactResult resolveArtifact(RepositorySystemSession session, ArtifactRequest request)
			throws ArtifactResolutionException {
		return resolveArtifacts(session, List.of(request)).get(0);
	}

	@Override
	public List<ArtifactResult> resolveArtifacts(RepositorySystemSession session,
			Collection<? extends ArtifactRequest> requests) throws ArtifactResolutionException {
		Map<String, List<ArtifactRequest>> byExemption = requests.stream()
				.collect(groupingBy(FetchedAndLocalArtifacts::exemption));
		List<ArtifactResult> results = new ArrayList<>();
		for (Map.Entry<String, List<ArtifactRequest>> each : byExemption.entrySet()) {
			try {
				results.addAll(maven.resolveArtifacts(without(each.getKey(), session), each.getValue()));
			} catch (ArtifactResolutionException e) {
				results.addAll(e.getResults());
				throw new ArtifactResolutionException(results, e.getMessage(), e.getCause());
			}
		}
		return results;
	}

	/** The setting of Maven's that does not hold for an artifact, or nothing. */
	private static String exemption(ArtifactRequest request) {
		if (request.getArtifact().getProperty(ArtifactProperties.LOCAL_PATH, null) != null) {
			return COMPARISON;
		}
		return request.getRequestContext().startsWith("project") ? FAIL_IF_MISSING : "";
	}

	private static RepositorySystemSession without(String setting, RepositorySystemSession session) {
		return setting.isEmpty() ? session
				: new DefaultRepositorySystemSession(session).setConfigProperty(setting, false);
	}
}
