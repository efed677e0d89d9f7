using System.Collections.Immutable;

namespace TemplateForge.Notation;

/// <summary>Ordinary arithmetic with units, for somebody who has never programmed.</summary>
/// <remarks>
/// <para>Numbers may have a unit: <c>12 mm</c>, <c>1.5 in</c>, <c>30 deg</c>, <c>18 ga steel</c>. A fraction of two whole numbers with
/// a unit behind it is one number, <c>1/2 in</c>; so is a mixed number, with a unit or without: <c>1 3/8 in</c>, <c>1 3/8</c>. Any
/// other / divides, and a unit belongs to the number just before it: <c>2 * 3 mm</c> is 6 mm, <c>width/2 in</c> is the width in
/// half inches. What could be taken two ways is refused: <c>12 mm^2</c>, <c>6/1/2 in</c>.</para>
/// <para>Signs: + - * / ^, parentheses, &lt; ≤ &gt; ≥ = &lt;&gt; (also &lt;= and &gt;=; two may frame a value: <c>0 &lt; x &lt; 5 mm</c>),
/// <c>and or not</c>, <c>process is mig</c>, <c>process is not mig</c>, <c>if a &gt; b then a else b</c>. ^ goes first and from the
/// right, then the minus sign: -2^2 is -4. Values within a billionth of each other are equal.</para>
/// <para>Functions: see <see cref="Functions"/>. A plain 0 may stand beside a quantity of any dimension. Every other
/// <c>name(…)</c> is a measure of shapes, if the scope knows it.</para>
/// </remarks>
public sealed class Expression
{
    /// <summary>In characters.</summary>
    public const int LongestText = QuantityReader.LongestText;

    /// <summary>Parentheses, functions, signs and conditions one inside the other.</summary>
    public const int DeepestNesting = 50;

    private readonly Writing writing;
    private readonly Term root;

    private Expression(Writing writing, Term root)
    {
        (this.writing, this.root) = (writing, root);
        var names = ImmutableArray.CreateBuilder<string>();
        var measures = ImmutableArray.CreateBuilder<MeasureUse>();
        Collect(root, names, measures);
        NamesUsed = [.. names.Distinct(StringComparer.Ordinal)];
        MeasuresUsed = measures.ToImmutable();
    }

    /// <summary>As written.</summary>
    public string Text => writing.Text;

    /// <summary>Where its first character stands.</summary>
    public Place Place => writing.At(0);

    /// <summary>The names that are read as values, each once, in the order of their first use.</summary>
    public ImmutableArray<string> NamesUsed { get; }

    /// <summary>The measures of shapes, in the order in which they are written.</summary>
    public ImmutableArray<MeasureUse> MeasuresUsed { get; }

    internal static ImmutableArray<string> Keywords { get; } = ["and", "or", "not", "is", "if", "then", "else"];

    /// <summary>Whether a word can be the name of a value or a shape: letters, digits and underscores, a letter first.</summary>
    public static bool IsName(string word) =>
        word.Length > 0 && (char.IsAsciiLetter(word[0]) || word[0] == '_') && word.All(c => char.IsAsciiLetterOrDigit(c) || c == '_');

    /// <summary>Whether a word means something in every expression (if, pi, sin, mm), so that no value should be named so.</summary>
    public static bool IsReserved(string word) =>
        word == "pi" || Keywords.Contains(word) || Functions.IsKnown(word) || Unit.TryFind(word, out _);

    /// <summary>Reads an expression whose first character stands at <paramref name="place"/>; names and dimensions are not looked at.</summary>
    /// <returns>False after one complaint.</returns>
    public static bool TryRead(string text, Place place, ICollection<Complaint> complaints, out Expression expression) =>
        TryRead(new Writing(text, place), complaints, out expression);

    /// <inheritdoc cref="TryRead(string, Place, ICollection{Complaint}, out Expression)"/>
    public static bool TryRead(Writing writing, ICollection<Complaint> complaints, out Expression expression)
    {
        ArgumentNullException.ThrowIfNull(writing);
        ArgumentNullException.ThrowIfNull(complaints);
        expression = new(writing, new LiteralTerm(0, 0, default));
        if (writing.Text.Length > LongestText)
        {
            complaints.Add(Wordings.TextTooLong(writing.At(0), writing.Text.Length, LongestText));
            return false;
        }
        if (!Lexer.TryRead(writing, complaints, out var tokens) || !new ExpressionParser(writing, tokens, complaints).TryParse(out var term))
            return false;
        expression = new(writing, term);
        return true;
    }

    /// <summary>Checks every name, word and dimension, and tells what the expression will come to. Nothing is computed.</summary>
    /// <returns>False after one complaint for each fault, with the place of the faulty part.</returns>
    public bool TryCheck(IExpressionNames names, ICollection<Complaint> complaints, out ValueKind kind)
    {
        ArgumentNullException.ThrowIfNull(names);
        ArgumentNullException.ThrowIfNull(complaints);
        return new Checker(writing, names, complaints).TryCheck(root, out kind);
    }

    /// <summary>Computes an expression that <see cref="TryCheck"/> has found right for names of the same kinds.</summary>
    /// <returns>False after one complaint: a division by zero, the root of a negative number, …</returns>
    /// <exception cref="InvalidOperationException">A value is not of the kind that the expression needs.</exception>
    public bool TryEvaluate(IExpressionValues values, ICollection<Complaint> complaints, out Value value)
    {
        ArgumentNullException.ThrowIfNull(values);
        ArgumentNullException.ThrowIfNull(complaints);
        return new Evaluator(writing, values, complaints).TryEvaluate(root, out value);
    }

    public override string ToString() => Text;

    private void Collect(Term term, ImmutableArray<string>.Builder names, ImmutableArray<MeasureUse>.Builder measures)
    {
        switch (term)
        {
            case NameTerm name:
                names.Add(name.Name);
                break;
            case CallTerm call when !Functions.IsKnown(call.Function) && call.Arguments.All(argument => argument is NameTerm):
                measures.Add(new(call.Function, [.. call.Arguments.Cast<NameTerm>().Select(shape => shape.Name)], writing.At(call.Start)));
                break;
            default:
                foreach (var part in Parts(term))
                    Collect(part, names, measures);
                break;
        }
    }

    private static ImmutableArray<Term> Parts(Term term) => term switch
    {
        NegativeTerm negative => [negative.Operand],
        ArithmeticTerm sum => [sum.Left, sum.Right],
        ComparisonTerm comparison => comparison.Operands,
        ChoiceTerm choice => [choice.Operand],
        NotTerm not => [not.Operand],
        LogicTerm logic => [logic.Left, logic.Right],
        IfTerm condition => [condition.Condition, condition.Then, condition.Else],
        CallTerm call => call.Arguments,
        _ => [],
    };
}
