package newel.casefile;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import newel.limit.Limit;

/** How each kind of limit is named when it is written, in the database and in case files; kept when a class is renamed. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
@JsonSubTypes({
    @JsonSubTypes.Type(value = Limit.Angle.class, name = "angle"),
    @JsonSubTypes.Type(value = Limit.Load.class, name = "load"),
    @JsonSubTypes.Type(value = Limit.Positions.class, name = "positions"),
    @JsonSubTypes.Type(value = Limit.SupportNeeded.class, name = "support"),
    @JsonSubTypes.Type(value = Limit.Time.class, name = "time"),
    @JsonSubTypes.Type(value = Limit.GripAtMost.class, name = "grip"),
    @JsonSubTypes.Type(value = Limit.NoWristWeight.class, name = "wrist"),
    @JsonSubTypes.Type(value = Limit.HeldAtMost.class, name = "held"),
    @JsonSubTypes.Type(value = Limit.CoordinationAtMost.class, name = "coordination"),
    @JsonSubTypes.Type(value = Limit.EffortAtMost.class, name = "effort"),
    @JsonSubTypes.Type(value = Limit.Avoid.class, name = "avoid"),
    @JsonSubTypes.Type(value = Limit.KitAtHome.class, name = "kit"),
    @JsonSubTypes.Type(value = Limit.Ceiling.class, name = "ceiling"),
    @JsonSubTypes.Type(value = Limit.ClearSpace.class, name = "space"),
    @JsonSubTypes.Type(value = Limit.Withheld.class, name = "withheld")
})
public interface LimitKinds {}
