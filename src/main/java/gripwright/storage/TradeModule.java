package gripwright.storage;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.BeanDescription;
import com.fasterxml.jackson.databind.DeserializationConfig;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.KeyDeserializer;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.BeanDeserializerModifier;
import com.fasterxml.jackson.databind.deser.KeyDeserializers;
import com.fasterxml.jackson.databind.module.SimpleModule;
import gripwright.units.Swingweight;
import java.io.IOException;

/** How files spell what is special to the trade: fixed choices, metrics and swingweights. */
final class TradeModule extends SimpleModule {

    private static final long serialVersionUID = 1;

    TradeModule() {
        super("gripwright");
        addSerializer(enums(), new EnumWriter());
        addKeySerializer(enums(), new EnumKeyWriter());
        setDeserializerModifier(new EnumReaders());
        addSerializer(Swingweight.class, new SwingweightWriter());
        addDeserializer(Swingweight.class, new SwingweightReader());
        addDeserializer(Double.class, new FiniteReader(Double.class));
        addDeserializer(double.class, new FiniteReader(double.class));
    }

    @Override
    public void setupModule(SetupContext context) {
        super.setupModule(context);
        context.addKeyDeserializers(new EnumKeyReaders());
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Class<Enum<?>> enums() {
        return (Class) Enum.class;
    }

    private static final class EnumWriter extends JsonSerializer<Enum<?>> {
        @Override
        public void serialize(Enum<?> value, JsonGenerator out, SerializerProvider provider) throws IOException {
            out.writeString(EnumText.of(value));
        }
    }

    private static final class EnumKeyWriter extends JsonSerializer<Enum<?>> {
        @Override
        public void serialize(Enum<?> value, JsonGenerator out, SerializerProvider provider) throws IOException {
            out.writeFieldName(EnumText.of(value));
        }
    }

    private static final class EnumReaders extends BeanDeserializerModifier {

        private static final long serialVersionUID = 1;

        @Override
        public JsonDeserializer<?> modifyEnumDeserializer(DeserializationConfig config, JavaType type,
                BeanDescription description, JsonDeserializer<?> deserializer) {
            return new EnumReader(type.getRawClass());
        }
    }

    private static final class EnumReader extends JsonDeserializer<Enum<?>> {

        private final Class<?> type;

        EnumReader(Class<?> type) {
            this.type = type;
        }

        @Override
        public Enum<?> deserialize(JsonParser parser, DeserializationContext context) throws IOException {
            if (parser.currentToken() != JsonToken.VALUE_STRING) {
                return (Enum<?>) context.handleUnexpectedToken(type, parser);
            }
            String text = parser.getText();
            return EnumText.parse(type, text).orElseThrow(() -> context.weirdStringException(text, type, "unknown"));
        }
    }

    private static final class EnumKeyReaders implements KeyDeserializers {
        @Override
        public KeyDeserializer findKeyDeserializer(JavaType type, DeserializationConfig config,
                BeanDescription description) {
            return type.isEnumType() ? new EnumKeyReader(type.getRawClass()) : null;
        }
    }

    private static final class EnumKeyReader extends KeyDeserializer {

        private final Class<?> type;

        EnumKeyReader(Class<?> type) {
            this.type = type;
        }

        @Override
        public Object deserializeKey(String key, DeserializationContext context) throws IOException {
            return EnumText.parse(type, key).orElseThrow(() -> context.weirdStringException(key, type, "unknown"));
        }
    }

    private static final class SwingweightWriter extends JsonSerializer<Swingweight> {
        @Override
        public void serialize(Swingweight value, JsonGenerator out, SerializerProvider provider) throws IOException {
            out.writeStartObject();
            out.writeNumberField("points", value.points());
            out.writeStringField("text", value.text());
            out.writeEndObject();
        }
    }

    /** The points count; the text beside them is for people and is passed over. */
    private static final class SwingweightReader extends JsonDeserializer<Swingweight> {

        /** What is read of it. */
        record Points(double points, Object text) {
        }

        @Override
        public Swingweight deserialize(JsonParser parser, DeserializationContext context) throws IOException {
            Points read = context.readValue(parser, Points.class);
            try {
                return new Swingweight(read.points());
            } catch (IllegalArgumentException e) {
                throw context.instantiationException(Swingweight.class, e);
            }
        }
    }

    /** Numbers are numbers, not texts that look like one, and none is beyond all bounds. */
    private static final class FiniteReader extends JsonDeserializer<Double> {

        private final Class<Double> type;

        FiniteReader(Class<Double> type) {
            this.type = type;
        }

        @Override
        public Double deserialize(JsonParser parser, DeserializationContext context) throws IOException {
            JsonToken token = parser.currentToken();
            if (token != JsonToken.VALUE_NUMBER_INT && token != JsonToken.VALUE_NUMBER_FLOAT) {
                return (Double) context.handleUnexpectedToken(type, parser);
            }
            double value = parser.getDoubleValue();
            if (!Double.isFinite(value)) {
                throw context.weirdNumberException(value, type, "beyond all bounds");
            }
            return value;
        }

        @Override
        public Double getNullValue(DeserializationContext context) throws JsonMappingException {
            return type.isPrimitive() ? context.reportInputMismatch(this, "missing") : null;
        }

        @Override
        public Class<Double> handledType() {
            return type;
        }
    }
}
