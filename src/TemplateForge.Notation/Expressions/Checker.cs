namespace TemplateForge.Notation;

/// <summary>Finds out what an expression comes to without computing it.</summary>
/// <remarks>A part that is wrong is complained of once; what is built on it is not complained of for that reason.</remarks>
internal sealed class Checker(Writing writing, IExpressionNames names, ICollection<Complaint> complaints)
{
    /// <summary>No power of a length or an angle that a shop measures goes beyond this.</summary>
    private const int HighestPower = 9;

    private readonly HashSet<string> unknown = new(StringComparer.Ordinal);

    public bool TryCheck(Term term, out ValueKind kind)
    {
        kind = ValueKind.Number;
        switch (term)
        {
            case LiteralTerm literal:
                kind = ValueKind.Of(literal.Quantity.Dimension);
                return true;
            case NameTerm name:
                return TryName(name, out kind);
            case NegativeTerm negative:
                return TryQuantity(negative.Operand, out var operand) && Give(operand, out kind);
            case ArithmeticTerm arithmetic:
                return TryArithmetic(arithmetic, out kind);
            case ComparisonTerm comparison:
                return TryComparison(comparison) & Give(ValueKind.Truth, out kind);
            case ChoiceTerm choice:
                return TryChoice(choice) & Give(ValueKind.Truth, out kind);
            case NotTerm not:
                return TryTruth(not.Operand) & Give(ValueKind.Truth, out kind);
            case LogicTerm logic:
                return TryTruth(logic.Left) & TryTruth(logic.Right) & Give(ValueKind.Truth, out kind);
            case IfTerm condition:
                return TryIf(condition, out kind);
            case CallTerm call:
                return Functions.TryFind(call.Function, out var function)
                    ? TryFunction(call, function, out kind)
                    : TryMeasure(call, out kind);
            default:
                throw new ArgumentException($"{term.GetType().Name} is no part of an expression.", nameof(term));
        }
    }

    private bool TryName(NameTerm name, out ValueKind kind)
    {
        if (names.TryKind(name.Name, out kind))
            return true;
        kind = ValueKind.Number;
        if (!unknown.Add(name.Name))
            return false;
        return Refuse(names.KnowsShape(name.Name)
            ? Wordings.ShapeAsValue(At(name), name.Name, names.AllMeasures.FirstOrDefault(measure => names.TryMeasure(measure, 1, out _), ""))
            : Wordings.UnknownName(At(name), name.Name, names.AllNames));
    }

    private bool TryArithmetic(ArithmeticTerm term, out ValueKind kind)
    {
        kind = ValueKind.Number;
        if (!(TryQuantity(term.Left, out Dimension left) & TryQuantity(term.Right, out Dimension right)))
            return false;
        if (term.Sign is '+' or '-')
        {
            if (!TryAgree(term.Left, ref left, term.Right, ref right))
            {
                var bare = BareNumber(term.Left, term.Right);
                return Refuse(Wordings.AddsUnlike(At(term), Quote(term), isSum: term.Sign == '+', left, right, bare));
            }
            return Give(left, out kind);
        }
        var dimension = left;
        if (term.Sign == '^')
        {
            if (right != Dimension.Number)
                return Refuse(Wordings.ExponentWithUnit(At(term.Right), Quote(term.Right), right));
            if (left != Dimension.Number)
            {
                if (!TryWholeExponent(term.Right, out var exponent))
                    return Refuse(Wordings.ExponentNotWhole(At(term.Right), Quote(term.Left), left, HighestPower));
                dimension = left.Power(exponent);
            }
        }
        else
        {
            dimension = term.Sign == '*' ? left * right : left / right;
        }
        if (Math.Abs(dimension.LengthPower) > HighestPower || Math.Abs(dimension.AnglePower) > HighestPower)
            return Refuse(Wordings.PowerTooHigh(At(term), Quote(term)));
        return Give(dimension, out kind);
    }

    private static bool TryWholeExponent(Term term, out int exponent)
    {
        var sign = term is NegativeTerm ? -1 : 1;
        var size = (term is NegativeTerm negative ? negative.Operand : term) is LiteralTerm literal ? literal.Quantity.Value : double.NaN;
        var isWhole = size == Math.Floor(size) && size <= HighestPower;
        exponent = isWhole ? sign * (int)size : 0;
        return isWhole;
    }

    private bool TryComparison(ComparisonTerm term)
    {
        for (var i = 0; i < term.Signs.Length; i++)
        {
            var (left, right) = (term.Operands[i], term.Operands[i + 1]);
            if (term.Signs[i] is "=" or "<>" && left is NameTerm chosen
                && names.TryKind(chosen.Name, out var kind) && kind is ChoiceKind)
            {
                var word = right is NameTerm name ? name.Name : Quote(right);
                return Refuse(Wordings.ChoiceWithEquals(At(left), chosen.Name, term.Signs[i] == "=", word));
            }
        }
        var dimensions = new Dimension[term.Operands.Length];
        var isRight = true;
        for (var i = 0; i < dimensions.Length; i++)
            isRight &= TryQuantity(term.Operands[i], out dimensions[i]);
        for (var i = 0; isRight && i < term.Signs.Length; i++)
        {
            var (left, right) = (term.Operands[i], term.Operands[i + 1]);
            var (first, second) = (dimensions[i], dimensions[i + 1]);
            if (!TryAgree(left, ref first, right, ref second))
                isRight = Refuse(Wordings.ComparesUnlike(
                    At(left), writing.Text[left.Start..right.End], dimensions[i], dimensions[i + 1], BareNumber(left, right)));
        }
        return isRight;
    }

    private bool TryChoice(ChoiceTerm term)
    {
        if (!TryCheck(term.Operand, out var kind))
            return false;
        var place = writing.At(term.WordStart);
        return kind switch
        {
            ChoiceKind choice => choice.Options.Contains(term.Word)
                || Refuse(Wordings.UnknownOption(place, term.Word, Quote(term.Operand), choice.Options)),
            TruthKind => term.Word is "yes" or "no"
                || Refuse(Wordings.UnknownOption(place, term.Word, Quote(term.Operand), ["yes", "no"])),
            _ => Refuse(Wordings.IsNeedsChoice(At(term.Operand), Quote(term.Operand), kind)),
        };
    }

    private bool TryIf(IfTerm term, out ValueKind kind)
    {
        kind = ValueKind.Number;
        if (!(TryTruth(term.Condition) & TryCheck(term.Then, out var then) & TryCheck(term.Else, out var otherwise)))
            return false;
        kind = then;
        if (then is ChoiceKind a && otherwise is ChoiceKind b)
            return Give(ValueKind.Choice(a.Options.Union(b.Options)), out kind);
        return then == otherwise || Refuse(Wordings.BranchesUnlike(At(term.Else), then, otherwise, BareNumber(term.Then, term.Else)));
    }

    private bool TryFunction(CallTerm call, Function function, out ValueKind kind)
    {
        kind = ValueKind.Number;
        var dimensions = new Dimension[call.Arguments.Length];
        var isRight = true;
        for (var i = 0; i < dimensions.Length; i++)
            isRight &= TryQuantity(call.Arguments[i], out dimensions[i]);
        if (!isRight)
            return false;
        if (call.Arguments.Length < function.Least || call.Arguments.Length > function.Most)
            return Refuse(Wordings.WrongCount(At(call), function.Name, function.Least, function.Most, call.Arguments.Length));
        var first = call.Arguments[0];
        switch (function.Signature)
        {
            case Signature.OfAngle:
                return dimensions[0] == Dimension.Angle
                    || Refuse(Wordings.NeedsAngle(At(first), function.Name, Quote(first), dimensions[0]));
            case Signature.ToAngle:
                return (dimensions[0] == Dimension.Number
                    || Refuse(Wordings.NeedsNumber(At(first), function.Name, Quote(first), dimensions[0])))
                    & Give(Dimension.Angle, out kind);
            case Signature.Root:
                var isEven = dimensions[0].LengthPower % 2 == 0 && dimensions[0].AnglePower % 2 == 0;
                return (isEven || Refuse(Wordings.RootOf(At(first), Quote(first), dimensions[0])))
                    & Give(new Dimension(dimensions[0].LengthPower / 2, dimensions[0].AnglePower / 2), out kind);
        }
        var model = Math.Max(0, call.Arguments.ToList().FindIndex(argument => argument is not LiteralTerm { IsNothing: true }));
        var shared = dimensions[model];
        for (var i = 0; i < dimensions.Length; i++)
        {
            if (!TryAgree(call.Arguments[model], ref shared, call.Arguments[i], ref dimensions[i]))
                return Refuse(Wordings.ArgumentsUnlike(
                    At(call.Arguments[i]), function.Name, shared, dimensions[i], BareNumber(call.Arguments[model], call.Arguments[i])));
        }
        return Give(function.Signature == Signature.DirectionOf ? Dimension.Angle : shared, out kind);
    }

    private bool TryMeasure(CallTerm call, out ValueKind kind)
    {
        kind = ValueKind.Number;
        if (!names.AllMeasures.Contains(call.Function))
            return Refuse(Wordings.UnknownFunction(At(call), call.Function, Functions.Names.Concat(names.AllMeasures)));
        if (!names.TryMeasure(call.Function, call.Arguments.Length, out var dimension))
            return Refuse(Wordings.WrongShapeCount(At(call), call.Function, call.Arguments.Length));
        var isRight = Give(dimension, out kind);
        foreach (var argument in call.Arguments)
        {
            if (argument is not NameTerm shape)
                isRight = Refuse(Wordings.NotAShape(At(argument), call.Function, Quote(argument)));
            else if (!names.KnowsShape(shape.Name) && unknown.Add(shape.Name))
                isRight = Refuse(Wordings.UnknownShape(At(argument), shape.Name, names.AllShapes));
            else if (!names.KnowsShape(shape.Name))
                isRight = false;
        }
        return isRight;
    }

    private bool TryQuantity(Term term, out Dimension dimension)
    {
        dimension = Dimension.Number;
        if (!TryCheck(term, out var kind))
            return false;
        if (kind is not QuantityKind quantity)
            return Refuse(Wordings.NeedsQuantity(At(term), Quote(term), kind));
        dimension = quantity.Dimension;
        return true;
    }

    private bool TryTruth(Term term) =>
        TryCheck(term, out var kind) && (kind is TruthKind || Refuse(Wordings.NeedsTruth(At(term), Quote(term), kind)));

    /// <summary>Two that are added or compared must be alike; a plain 0 takes the dimension of the other.</summary>
    private static bool TryAgree(Term first, ref Dimension a, Term second, ref Dimension b)
    {
        if (first is LiteralTerm { IsNothing: true } && a == Dimension.Number)
            a = b;
        else if (second is LiteralTerm { IsNothing: true } && b == Dimension.Number)
            b = a;
        return a == b;
    }

    /// <summary>A number without a unit that was written where one with a unit is wanted; empty where neither is one.</summary>
    private string BareNumber(Term first, Term second) =>
        first is LiteralTerm a && a.Quantity.Dimension == Dimension.Number ? Quote(first)
        : second is LiteralTerm b && b.Quantity.Dimension == Dimension.Number ? Quote(second)
        : "";

    private static bool Give(ValueKind found, out ValueKind kind)
    {
        kind = found;
        return true;
    }

    private static bool Give(Dimension found, out ValueKind kind) => Give(ValueKind.Of(found), out kind);

    private Place At(Term term) => writing.At(term.Start);

    private string Quote(Term term) => writing.Text[term.Start..term.End];

    private bool Refuse(Complaint complaint)
    {
        complaints.Add(complaint);
        return false;
    }
}
