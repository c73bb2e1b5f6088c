import static java.util.stream.Collectors.partitioningBy;

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
 */
@Named
@Priority(1)
@Singleton
public final class FetchedAndLocalArtifacts implements ArtifactResolver {
	private static final String COMPARISON = "aether.artifactResolver.postProcessor.trustedChecksums";

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
		Map<Boolean, List<ArtifactRequest>> byLocal = requests.stream()
				.collect(partitioningBy(FetchedAndLocalArtifacts::isLocal));
		List<ArtifactResult> results = new ArrayList<>();
		if (!byLocal.get(true).isEmpty()) {
			results.addAll(maven.resolveArtifacts(withoutComparison(session), byLocal.get(true)));
		}
		try {
			results.addAll(maven.resolveArtifacts(session, byLocal.get(false)));
		} catch (ArtifactResolutionException e) {
			results.addAll(e.getResults());
			throw new ArtifactResolutionException(results, e.getMessage(), e.getCause());
		}
		return results;
	}

	private static boolean isLocal(ArtifactRequest request) {
		return request.getArtifact().getProperty(ArtifactProperties.LOCAL_PATH, null) != null;
	}

	private static RepositorySystemSession withoutComparison(RepositorySystemSession session) {
		return new DefaultRepositorySystemSession(session).setConfigProperty(COMPARISON, false);
	}
}
