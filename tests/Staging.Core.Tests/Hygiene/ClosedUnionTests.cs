using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Hygiene;

/// <summary>Every outcome type names all its cases in one Match, so that a forgotten case does not compile.</summary>
public class ClosedUnionTests
{
    [Fact]
    public void Every_closed_union_has_a_match_with_one_argument_a_case() =>
        Violations.None(Compiled.Library.GetTypes().Where(IsUnion).SelectMany(ClosedUnions.Broken));

    [Fact]
    public void A_match_that_forgets_a_case_is_caught() => Assert.Single(ClosedUnions.Broken(typeof(Forgetful)));

    [Fact]
    public void An_open_or_outlying_case_is_caught() => Assert.Equal(2, ClosedUnions.Broken(typeof(Leaky)).Count());

    [Fact]
    public void A_complete_union_passes()
    {
        Assert.True(IsUnion(typeof(Complete)));
        Assert.Empty(ClosedUnions.Broken(typeof(Complete)));
    }

    private static bool IsUnion(Type type) =>
        ClosedUnions.IsClosed(type) && (type.GetMethod("<Clone>$") is not null || (type.IsVisible && ClosedUnions.Cases(type).Count > 0));

    public sealed record Outside : Leaky
    {
        public Outside()
        {
        }
    }

    public abstract record Forgetful
    {
        private protected Forgetful()
        {
        }

        public T Match<T>(Func<Lit, T> lit) => this is Lit l ? lit(l) : throw new InvalidOperationException();

        public sealed record Lit : Forgetful;

        public sealed record Unlit : Forgetful;
    }

    public abstract record Leaky
    {
        private protected Leaky()
        {
        }

        public T Match<T>(Func<Lit, T> lit, Func<Outside, T> outside) =>
            this is Lit l ? lit(l) : this is Outside o ? outside(o) : throw new InvalidOperationException();

        public record Lit : Leaky;
    }

    public abstract record Complete
    {
        private protected Complete()
        {
        }

        public T Match<T>(Func<Lit, T> lit, Func<Unlit, T> unlit) => this switch
        {
            Lit l => lit(l),
            Unlit u => unlit(u),
            _ => throw new InvalidOperationException(),
        };

        public sealed record Lit(double Time_s) : Complete;

        public sealed record Unlit : Complete;
    }
}
