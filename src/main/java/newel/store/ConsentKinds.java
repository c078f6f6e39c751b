package newel.store;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import newel.referral.Consent;

/** How each kind of consent is called where it is stored. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
@JsonSubTypes({
    @JsonSubTypes.Type(value = Consent.NotAsked.class, name = "not-asked"),
    @JsonSubTypes.Type(value = Consent.Given.class, name = "given"),
    @JsonSubTypes.Type(value = Consent.Refused.class, name = "refused"),
    @JsonSubTypes.Type(value = Consent.Without.class, name = "without")
})
interface ConsentKinds {}
