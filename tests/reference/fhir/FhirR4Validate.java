import ca.uhn.fhir.context.FhirContext;
import ca.uhn.fhir.context.support.DefaultProfileValidationSupport;
import ca.uhn.fhir.context.support.IValidationSupport;
import ca.uhn.fhir.validation.FhirValidator;
import ca.uhn.fhir.validation.ResultSeverityEnum;
import ca.uhn.fhir.validation.SingleValidationMessage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hl7.fhir.common.hapi.validation.support.CommonCodeSystemsTerminologyService;
import org.hl7.fhir.common.hapi.validation.support.InMemoryTerminologyServerValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.PrePopulatedValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.SnapshotGeneratingValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.ValidationSupportChain;
import org.hl7.fhir.common.hapi.validation.validator.FhirInstanceValidator;
import org.hl7.fhir.instance.model.api.IBaseResource;
import org.hl7.fhir.r4.model.Bundle;
import org.hl7.fhir.r4.model.CodeSystem;
import org.hl7.fhir.r4.model.Questionnaire;
import org.hl7.fhir.r4.model.QuestionnaireResponse;
import org.hl7.fhir.r4.model.Observation;
import org.hl7.fhir.r4.model.Procedure;
import org.hl7.fhir.r4.model.StringType;
import org.hl7.fhir.r4.model.StructureDefinition;

/**
 * Validates FHIR bundles against R4 (4.0.1) and against our own definitions with the validator of HAPI FHIR (Maven), which
 * is independent of us. Without a terminology server it cannot judge codes of SNOMED CT; it judges every other one.
 *
 * Usage: FhirR4Validate DEFINITIONS.json BUNDLE.json...
 */
class FhirR4Validate {
    private static final FhirContext R4 = FhirContext.forR4();

    private static Bundle read(String file) throws Exception {
        return R4.newJsonParser().parseResource(Bundle.class, Files.readString(Path.of(file)));
    }

    private static FhirValidator validatorFor(Bundle definitions) {
        List<Questionnaire> questionnaires = new ArrayList<>();
        PrePopulatedValidationSupport own = new PrePopulatedValidationSupport(R4) {
            @Override
            public <T extends IBaseResource> T fetchResource(Class<T> kind, String url) {
                for (Questionnaire one : questionnaires) {
                    if (kind == Questionnaire.class && one.getUrl().equals(url)) {
                        return kind.cast(one);
                    }
                }
                return super.fetchResource(kind, url);
            }
        };
        for (Bundle.BundleEntryComponent entry : definitions.getEntry()) {
            if (entry.getResource() instanceof CodeSystem system) {
                own.addCodeSystem(system);
            } else if (entry.getResource() instanceof StructureDefinition structure) {
                own.addStructureDefinition(structure);
            } else {
                questionnaires.add((Questionnaire) entry.getResource());
            }
        }
        IValidationSupport chain = new ValidationSupportChain(new DefaultProfileValidationSupport(R4), own,
                new CommonCodeSystemsTerminologyService(R4), new InMemoryTerminologyServerValidationSupport(R4),
                new SnapshotGeneratingValidationSupport(R4));
        FhirInstanceValidator instance = new FhirInstanceValidator(chain);
        instance.setErrorForUnknownProfiles(true);
        instance.setAnyExtensionsAllowed(false);
        return R4.newValidator().registerValidatorModule(instance);
    }

    /** Errors, and warnings about codes of our own; each as a line. */
    private static List<String> faults(FhirValidator validator, Bundle bundle) {
        List<String> out = new ArrayList<>();
        for (SingleValidationMessage m : validator.validateWithResult(bundle).getMessages()) {
            boolean counts = m.getSeverity().ordinal() >= ResultSeverityEnum.ERROR.ordinal();
            boolean ofOurs = m.getSeverity() == ResultSeverityEnum.WARNING && m.getMessage().contains("firstdew.example");
            if (counts || ofOurs) {
                out.add(m.getSeverity() + " " + m.getLocationString() + ": " + m.getMessage());
            }
        }
        return out;
    }

    private static <T> T first(Bundle bundle, Class<T> kind) {
        return bundle.getEntry().stream().map(Bundle.BundleEntryComponent::getResource).filter(kind::isInstance).map(kind::cast)
                .findFirst().orElseThrow();
    }

    /** One resource of each kind. */
    private static Bundle sample(Bundle whole) {
        Bundle out = whole.copy();
        Set<String> kinds = new HashSet<>();
        out.getEntry().removeIf(entry -> !kinds.add(entry.getResource().fhirType()));
        return out;
    }

    /** Bundles that are wrong on purpose: a validator that takes one of them proves nothing. */
    private static List<Bundle> broken(Bundle whole) {
        Bundle bundle = sample(whole);
        List<Bundle> out = new ArrayList<>();
        Bundle noStatus = bundle.copy();
        first(noStatus, Observation.class).setStatus(null);
        out.add(noStatus);
        Bundle ownCode = bundle.copy();
        first(ownCode, QuestionnaireResponse.class).getItem().get(1).getAnswerFirstRep().getValueCoding().setCode("5");
        out.add(ownCode);
        Bundle extension = bundle.copy();
        first(extension, Procedure.class).getExtension().get(0).setValue(new StringType("not a time"));
        out.add(extension);
        Bundle unknown = bundle.copy();
        first(unknown, Procedure.class).getExtension().get(0).setUrl("https://firstdew.example/fhir/StructureDefinition/none");
        out.add(unknown);
        return out;
    }

    public static void main(String[] arguments) throws Exception {
        Bundle definitions = read(arguments[0]);
        FhirValidator validator = validatorFor(definitions);
        int failed = 0;
        for (String file : arguments) {
            Bundle bundle = read(file);
            List<String> faults = faults(validator, bundle);
            faults.forEach(System.out::println);
            System.out.println(file + ": " + bundle.getEntry().size() + " resources, " + faults.size() + " faults");
            failed += faults.size();
            if (!file.equals(arguments[0])) {
                for (Bundle bad : broken(bundle)) {
                    if (faults(validator, bad).isEmpty()) {
                        System.out.println(file + ": the validator does not mind a bundle that is wrong on purpose");
                        failed++;
                    }
                }
            }
        }
        System.exit(failed == 0 ? 0 : 1);
    }
}
