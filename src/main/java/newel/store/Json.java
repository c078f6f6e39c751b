package newel.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.deser.std.FromStringDeserializer;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializer;
import java.time.LocalDate;
import newel.casefile.LimitKinds;
import newel.limit.Limit;
import newel.referral.Consent;

/** Records to JSON text and back. A limit is marked with its kind; dates are written as 2026-03-01. */
final class Json {
    private static final ObjectMapper MAPPER = JsonMapper.builder()
            .addModule(new SimpleModule()
                    .addSerializer(LocalDate.class, ToStringSerializer.instance)
                    .addDeserializer(LocalDate.class, new Dates()))
            .addMixIn(Limit.class, LimitKinds.class)
            .addMixIn(Consent.class, ConsentKinds.class)
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .build();

    static String write(Object value) {
        try {
            return MAPPER.writeValueAsString(value);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("cannot be written: " + value.getClass(), e);
        }
    }

    /** A whole list, each element marked with its kind: a plain list forgets its element type. */
    static <T> String write(Object value, TypeReference<T> type) {
        try {
            return MAPPER.writerFor(type).writeValueAsString(value);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("cannot be written: " + value.getClass(), e);
        }
    }

    static <T> T read(String text, Class<T> type) {
        try {
            return MAPPER.readValue(text, type);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("stored value cannot be read as " + type.getSimpleName(), e);
        }
    }

    static <T> T read(String text, TypeReference<T> type) {
        try {
            return MAPPER.readValue(text, type);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("stored value cannot be read as " + type.getType(), e);
        }
    }

    private static final class Dates extends FromStringDeserializer<LocalDate> {
        Dates() {
            super(LocalDate.class);
        }

        @Override
        protected LocalDate _deserialize(String text, DeserializationContext context) {
            return LocalDate.parse(text);
        }
    }

    private Json() {}
}
