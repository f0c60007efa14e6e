import { useLocation } from 'react-router';
import { useTexts } from '../texts/texts.js';
import { PageLink } from './navigation.js';
import styles from './sub-pages.module.css';

/** The pages of an area, above each of them. */
export function SubPages({
  label,
  pages,
}: {
  label: string;
  pages: readonly { to: string; name: string }[];
}) {
  const { pathname } = useLocation();
  const texts = useTexts();
  return (
    <nav aria-label={`${texts.app.pages}: ${label}`}>
      <ul className={styles.pages}>
        {pages.map(({ to, name }) => (
          <li key={to}>
            <PageLink
              to={to}
              underline="never"
              className={styles.page ?? ''}
              {...((to === pathname || pathname.startsWith(`${to}/`)) && { 'aria-current': 'page' })}
            >
              {name}
            </PageLink>
          </li>
        ))}
      </ul>
    </nav>
  );
}
