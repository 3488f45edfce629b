import type { Reply } from '#answer/reply.ts';
import { sentence } from '#answer/say.ts';
import type { RequestContext } from '../intent.ts';

type Forgetting = NonNullable<RequestContext['forgetting']>;
type Request = Extract<Forgetting, { stage: 'asked' | 'confirmed' }>['request'];

/** What would go: all of the chat, all of the asker, or one rig by its owner. */
type Scope =
  | { readonly what: 'chat' | 'me'; readonly says: string }
  | { readonly what: 'rig'; readonly owner: string; readonly says: string };

const mine = (kind: RequestContext['kind']): string =>
  kind === 'private' ? 'your rig' : 'your rig, your last question and your lessons';

/** Whose rig is meant: the one named, else one's own, else the group's. */
function rigScope({ owner }: Request, { rigs, ownKey }: RequestContext): Scope {
  const key = owner ?? (rigs[ownKey] || !rigs[''] ? ownKey : '');
  const says = key === ownKey ? 'your rig' : key === '' ? 'the rig of the group' : `${sentence(key)}’s rig`;
  return { what: 'rig', owner: key, says };
}

/** What a request comes to for this asker, and what hinders it. */
function scopeOf(request: Request, setting: RequestContext): Scope | { readonly refused: string } {
  const { kind, isAdmin, ownKey, rigs } = setting;
  if (request.which === 'rig') {
    const scope = rigScope(request, setting) as Extract<Scope, { what: 'rig' }>;
    if (rigs[scope.owner] === undefined) return { refused: `I keep nothing of ${scope.says}.` };
    const isTheirs = scope.owner === ownKey || kind === 'private';
    if (isTheirs || isAdmin) return scope;
    return {
      refused: `Only ${scope.owner === '' ? '' : `${sentence(scope.owner)} or `}an admin of the group can delete ${scope.says}.`,
    };
  }
  if (kind === 'private') return { what: 'chat', says: 'everything I know of this chat' };
  if (request.which === 'chat' && isAdmin) return { what: 'chat', says: 'everything I know of this chat' };
  return { what: 'me', says: mine(kind) };
}

const wishOf = (scope: Scope): NonNullable<Reply['remember']> =>
  scope.what === 'rig' ? { rigs: { [scope.owner]: null }, isFinal: true } : { forget: scope.what };

/** Asks once whether to forget, and forgets on a yes of the one who asked. */
export function answerForget(setting: RequestContext): Reply {
  const { forgetting = { stage: 'stray' as const } } = setting;
  if (forgetting.stage === 'declined') return { headline: 'Nothing is forgotten.' };
  if (!('request' in forgetting))
    return {
      headline: 'I forget only what you ask for plainly, and ask once before I do.',
      lines: ['Say “forget my rig”, “forget me” or “forget everything”.'],
    };
  const { request } = forgetting;
  const scope = scopeOf(request, setting);
  if ('refused' in scope) return { headline: scope.refused };
  const isLess = request.which === 'chat' && scope.what === 'me';
  const onlyAdmin =
    'What belongs to the whole group only an admin can delete: ask one to say “forget everything”.';
  if (forgetting.stage === 'confirmed')
    return {
      headline: `Done: ${scope.says} ${scope.what === 'me' && setting.kind === 'group' ? 'are' : 'is'} deleted and forgotten.`,
      lines: isLess ? [onlyAdmin] : [],
      remember: wishOf(scope),
    };
  return {
    headline: `Forget ${scope.says}? It can’t be brought back.`,
    lines: isLess ? [onlyAdmin] : [],
    next: ['yes, forget', 'no, keep it'],
    remember: { asksToForget: request },
  };
}
