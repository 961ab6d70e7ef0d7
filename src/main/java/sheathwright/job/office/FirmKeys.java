package sheathwright.job.office;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.job.table.Field;

/** What firm.csv may say of the firm. */
public final class FirmKeys {

  public static final Field<Choice<String>> NAME = Field.line("name", "Name of the firm");

  public static final Field<Choice<String>> ADDRESS = Field.line("address", "Address").ifKnown();

  public static final Field<Choice<String>> PHONE = Field.line("phone", "Phone").ifKnown();

  public static final Field<Choice<String>> EMAIL = Field.line("email", "E-mail").ifKnown();

  public static final Field<Choice<String>> LICENSE =
      Field.line("license", "License or registration").ifKnown();

  public static final Field<Choice<String>> INSURER = Field.line("insurer", "Insured by").ifKnown();

  public static final Field<Choice<String>> LOGO =
      Field.line("logo", "Logo: a PNG or JPEG file beside this table").ifKnown();

  public static final Field<Choice<String>> NEXT_QUOTE_NUMBER =
      Field.name("next_quote_number", "Number of the next quote; ends in digits").ifKnown();

  public static final Field<Choice<String>> PAYMENT_WORDS =
      Field.line("payment_words", "What holds of payment").ifKnown();

  public static final Field<Choice<String>> CANCEL_WORDS =
      Field.line("cancel_words", "What holds if the owner cancels").ifKnown();

  public static final Field<Choice<String>> WARRANTY_WORDS =
      Field.line("warranty_words", "What is warranted, and how long").ifKnown();

  public static final Field<Choice<String>> QUOTE_LETTERHEAD =
      Field.line("quote_letterhead", "Letterhead of quotes: an .xlsx file beside this table")
          .ifKnown();

  public static final Field<Choice<String>> ORDER_LETTERHEAD =
      Field.line(
              "change_order_letterhead",
              "Letterhead of change orders: an .xlsx file beside this table")
          .ifKnown();

  public static final Field<Choice<String>> INVOICE_LETTERHEAD =
      Field.line("invoice_letterhead", "Letterhead of invoices: an .xlsx file beside this table")
          .ifKnown();

  /** All of them. */
  public static final List<Field<?>> FIRM =
      List.of(
          NAME,
          ADDRESS,
          PHONE,
          EMAIL,
          LICENSE,
          INSURER,
          LOGO,
          NEXT_QUOTE_NUMBER,
          PAYMENT_WORDS,
          CANCEL_WORDS,
          WARRANTY_WORDS,
          QUOTE_LETTERHEAD,
          ORDER_LETTERHEAD,
          INVOICE_LETTERHEAD);

  private FirmKeys() {}
}
