package afterlength.workshop.ledger;

import afterlength.craft.colour.Spectrum;
import afterlength.craft.units.Money;
import java.sql.Types;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.argument.AbstractArgumentFactory;
import org.jdbi.v3.core.argument.Argument;
import org.jdbi.v3.core.config.ConfigRegistry;
import org.jdbi.v3.core.mapper.RowMapperFactory;
import org.jdbi.v3.core.mapper.reflect.ConstructorMapper;

/** How our value types stand in columns: times and dates as ISO 8601 text, money as whole minor units, spectra as text. */
final class ColumnKinds {
    /** Every record is read through its constructor, column by name. */
    private static final RowMapperFactory RECORDS = (type, config) -> type instanceof Class<?> kind && kind.isRecord()
            ? Optional.of(ConstructorMapper.of(kind))
            : Optional.empty();

    private ColumnKinds() {}

    static void register(Jdbi jdbi) {
        jdbi.registerRowMapper(RECORDS);
        jdbi.registerColumnMapper(Instant.class, (row, column, context) -> {
            String text = row.getString(column);
            return text == null ? null : Instant.parse(text);
        });
        jdbi.registerColumnMapper(LocalDate.class, (row, column, context) -> {
            String text = row.getString(column);
            return text == null ? null : LocalDate.parse(text);
        });
        jdbi.registerColumnMapper(Money.class, (row, column, context) -> {
            long minor = row.getLong(column);
            return row.wasNull() ? null : new Money(minor);
        });
        jdbi.registerColumnMapper(Spectrum.class, (row, column, context) -> {
            String text = row.getString(column);
            return text == null ? null : SpectrumText.read(text);
        });
        jdbi.registerArgument(new InstantArgument());
        jdbi.registerArgument(new DateArgument());
        jdbi.registerArgument(new MoneyArgument());
        jdbi.registerArgument(new SpectrumArgument());
    }

    private static final class InstantArgument extends AbstractArgumentFactory<Instant> {
        InstantArgument() {
            super(Types.VARCHAR);
        }

        @Override
        protected Argument build(Instant value, ConfigRegistry config) {
            return (position, statement, context) -> statement.setString(position, value.toString());
        }
    }

    private static final class DateArgument extends AbstractArgumentFactory<LocalDate> {
        DateArgument() {
            super(Types.VARCHAR);
        }

        @Override
        protected Argument build(LocalDate value, ConfigRegistry config) {
            return (position, statement, context) -> statement.setString(position, value.toString());
        }
    }

    private static final class MoneyArgument extends AbstractArgumentFactory<Money> {
        MoneyArgument() {
            super(Types.BIGINT);
        }

        @Override
        protected Argument build(Money value, ConfigRegistry config) {
            return (position, statement, context) -> statement.setLong(position, value.minor());
        }
    }

    private static final class SpectrumArgument extends AbstractArgumentFactory<Spectrum> {
        SpectrumArgument() {
            super(Types.VARCHAR);
        }

        @Override
        protected Argument build(Spectrum value, ConfigRegistry config) {
            return (position, statement, context) -> statement.setString(position, SpectrumText.write(value));
        }
    }
}
