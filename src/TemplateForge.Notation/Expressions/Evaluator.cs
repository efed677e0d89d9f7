using System.Collections.Immutable;

namespace TemplateForge.Notation;

/// <summary>Computes an expression that has been checked. Only the branch that holds is computed.</summary>
internal sealed class Evaluator(Writing writing, IExpressionValues values, ICollection<Complaint> complaints)
{
    public bool TryEvaluate(Term term, out Value value)
    {
        switch (term)
        {
            case LiteralTerm literal:
                return Give(literal.Quantity, out value);
            case NameTerm name:
                return values.TryValue(name.Name, writing.At(name.Start), out value!) || Fail(out value);
            case NegativeTerm negative:
                return TryQuantity(negative.Operand, out var operand) ? Give(-operand, out value) : Fail(out value);
            case ArithmeticTerm arithmetic:
                return TryArithmetic(arithmetic, out value);
            case ComparisonTerm comparison:
                return TryCompare(comparison, out value);
            case ChoiceTerm choice:
                if (!TryEvaluate(choice.Operand, out value))
                    return false;
                value = Value.Of((value.ToString() == choice.Word) != choice.IsNegated);
                return true;
            case NotTerm not:
                return TryTruth(not.Operand, out var truth) ? Give(!truth, out value) : Fail(out value);
            case LogicTerm logic:
                if (!TryTruth(logic.Left, out var left))
                    return Fail(out value);
                if (left != logic.IsAnd)
                    return Give(left, out value);
                return TryTruth(logic.Right, out var right) ? Give(right, out value) : Fail(out value);
            case IfTerm condition:
                return TryTruth(condition.Condition, out var holds)
                    ? TryEvaluate(holds ? condition.Then : condition.Else, out value)
                    : Fail(out value);
            case CallTerm call:
                return Functions.TryFind(call.Function, out var function)
                    ? TryFunction(call, function, out value)
                    : TryMeasure(call, out value);
            default:
                throw new ArgumentException($"{term.GetType().Name} is no part of an expression.", nameof(term));
        }
    }

    private bool TryArithmetic(ArithmeticTerm term, out Value value)
    {
        if (!TryQuantity(term.Left, out var left) || !TryQuantity(term.Right, out var right))
            return Fail(out value);
        switch (term.Sign)
        {
            case '+' or '-':
                var result = term.Sign == '+' ? left.Value + right.Value : left.Value - right.Value;
                return Finite(term, new(result, Shared(left.Dimension, right.Dimension)), out value);
            case '*':
                return Finite(term, left * right, out value);
            case '/':
                if (right.Value == 0)
                    return Refuse(Wordings.DividesByZero(writing.At(term.Right.Start), Quote(term.Right)), out value);
                return Finite(term, left / right, out value);
            default:
                if (left.Value == 0 && right.Value < 0)
                    return Refuse(Wordings.DividesByZero(writing.At(term.Left.Start), Quote(term.Left)), out value);
                var power = Math.Pow(left.Value, right.Value);
                if (double.IsNaN(power))
                    return Refuse(Wordings.PowerOfNegative(writing.At(term.Left.Start), Quote(term.Left), left), out value);
                var dimension = left.Dimension == Dimension.Number ? Dimension.Number : left.Dimension.Power((int)right.Value);
                return Finite(term, new(power, dimension), out value);
        }
    }

    private bool TryCompare(ComparisonTerm term, out Value value)
    {
        if (!TryQuantity(term.Operands[0], out var left))
            return Fail(out value);
        for (var i = 0; i < term.Signs.Length; i++)
        {
            if (!TryQuantity(term.Operands[i + 1], out var right))
                return Fail(out value);
            _ = Shared(left.Dimension, right.Dimension);
            if (!Holds(left.Value, term.Signs[i], right.Value))
                return Give(false, out value);
            left = right;
        }
        return Give(true, out value);
    }

    private static bool Holds(double left, string sign, double right)
    {
        var areEqual = Functions.AreEqual(left, right);
        return sign switch
        {
            "=" => areEqual,
            "<>" => !areEqual,
            "<" => left < right && !areEqual,
            "<=" => left < right || areEqual,
            ">" => left > right && !areEqual,
            _ => left > right || areEqual,
        };
    }

    private bool TryFunction(CallTerm call, Function function, out Value value)
    {
        var arguments = ImmutableArray.CreateBuilder<Quantity>();
        foreach (var argument in call.Arguments)
        {
            if (!TryQuantity(argument, out var quantity))
                return Fail(out value);
            arguments.Add(quantity);
        }
        var result = function.Compute([.. arguments.Select(argument => argument.Value)]);
        if (double.IsNaN(result))
            return Refuse(Wordings.NoAnswer(writing.At(call.Start), Quote(call), function.Name, arguments.ToImmutable()), out value);
        var dimension = function.Signature switch
        {
            Signature.OfAngle => Dimension.Number,
            Signature.ToAngle or Signature.DirectionOf => Dimension.Angle,
            Signature.Root => new(arguments[0].Dimension.LengthPower / 2, arguments[0].Dimension.AnglePower / 2),
            _ => arguments.Select(argument => argument.Dimension).Aggregate(Shared),
        };
        return Finite(call, new(result, dimension), out value);
    }

    private bool TryMeasure(CallTerm call, out Value value)
    {
        var shapes = call.Arguments.Select(argument => argument is NameTerm shape
            ? shape.Name
            : throw new InvalidOperationException($"{Quote(argument)} is no shape; the expression was not checked."));
        if (!values.TryMeasure(call.Function, [.. shapes], writing.At(call.Start), out var measure))
            return Fail(out value);
        return double.IsFinite(measure.Value)
            ? Give(measure, out value)
            : Refuse(Wordings.NoMeasure(writing.At(call.Start), Quote(call)), out value);
    }

    private bool TryQuantity(Term term, out Quantity quantity)
    {
        var isThere = TryEvaluate(term, out var value);
        quantity = isThere ? value.AsQuantity() : default;
        return isThere;
    }

    private bool TryTruth(Term term, out bool truth)
    {
        var isThere = TryEvaluate(term, out var value);
        truth = isThere && value.AsTruth();
        return isThere;
    }

    /// <summary>A plain 0 beside a length was checked to be 0 mm, so the dimension is that of whichever has one.</summary>
    private static Dimension Shared(Dimension a, Dimension b) =>
        a == b || b == Dimension.Number ? a
        : a == Dimension.Number ? b
        : throw new InvalidOperationException($"{a.Name} stands beside {b.Name}; the expression was not checked.");

    private bool Finite(Term term, Quantity quantity, out Value value) => double.IsFinite(quantity.Value)
        ? Give(quantity, out value)
        : Refuse(Wordings.ResultTooLarge(writing.At(term.Start), Quote(term)), out value);

    private bool Refuse(Complaint complaint, out Value value)
    {
        complaints.Add(complaint);
        return Fail(out value);
    }

    private static bool Give(Quantity quantity, out Value value)
    {
        value = Value.Of(quantity);
        return true;
    }

    private static bool Give(bool truth, out Value value)
    {
        value = Value.Of(truth);
        return true;
    }

    private static bool Fail(out Value value)
    {
        value = Value.Of(default(Quantity));
        return false;
    }

    private string Quote(Term term) => writing.Text[term.Start..term.End];
}
